// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The few steps on the disk that a save consists of. A test puts a failing one in its place. */
class Storage {

    /** Writes a file and forces it to the disk. */
    void writeForced(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** Gives a file a second name; where the disk has no links, copies it. */
    void keepAs(Path file, Path secondName) throws IOException {
        try {
            Files.createLink(secondName, file);
        } catch (UnsupportedOperationException | IOException noLink) {
            Files.deleteIfExists(secondName);
            writeForced(secondName, Files.readAllBytes(file));
        }
    }

    /** Puts a file in the place of another at once; whoever reads sees the old or the new one, never a part. */
    void replace(Path file, Path target) throws IOException {
        try {
            Files.move(file, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(file, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Forces the names in a folder to the disk, where the system can do that. */
    void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notPossible) {
            // Some systems do not open folders; the rename itself is atomic there too.
        }
    }
}
