// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardOpenOption;

/** The right to write into a workspace: held by one program at a time, given back by the system when the program dies. */
final class WorkspaceLock implements AutoCloseable {

    static final String NAME = ".lock";

    private final FileChannel channel;
    private final FileLock lock;

    private WorkspaceLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /** Takes the lock or says who stands in the way. */
    static WorkspaceLock take(Path folder) throws WorkspaceException {
        FileChannel channel;
        try {
            channel = FileChannel.open(folder.resolve(NAME), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw AtomicFiles.failure(folder, e);
        }
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return new WorkspaceLock(channel, lock);
            }
            channel.close();
        } catch (OverlappingFileLockException e) {
            closeQuietly(channel);
        } catch (IOException e) {
            closeQuietly(channel);
            throw AtomicFiles.failure(folder, e);
        }
        throw new WorkspaceException(FileProblem.LOCKED, folder, null);
    }

    private static void closeQuietly(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            // Nothing was written through it.
        }
    }

    @Override
    public void close() {
        try {
            lock.release();
        } catch (IOException e) {
            // The system gives it back with the channel.
        }
        closeQuietly(channel);
    }
}
