// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.Locale;

/**
 * Saves a file so that at every moment either the old or the new content stands under its name.
 *
 * <p>Steps: write beside and force to disk; give the old file its second name .bak; rename the new one over the old; force the
 * folder. When a step fails, what was written beside is deleted, the old file is untouched, and the exception says what
 * happened.</p>
 */
final class AtomicFiles {

    static final String TEMPORARY = ".pwtmp";
    static final String BACKUP = ".bak";

    private final Storage storage;

    AtomicFiles(Storage storage) {
        this.storage = storage;
    }

    /** Saves the content; the former content stays under the name with .bak added. */
    void save(Path file, byte[] content) throws WorkspaceException {
        Path beside = besideOf(file, TEMPORARY);
        Path besideBackup = besideOf(file, BACKUP + TEMPORARY);
        try {
            Files.createDirectories(file.getParent());
            storage.writeForced(beside, content);
            if (Files.exists(file)) {
                Files.deleteIfExists(besideBackup);
                storage.keepAs(file, besideBackup);
                storage.replace(besideBackup, backupOf(file));
            }
            storage.replace(beside, file);
            storage.forceFolder(file.getParent());
        } catch (IOException | ReadOnlyFileSystemException e) {
            deleteQuietly(beside);
            deleteQuietly(besideBackup);
            throw failure(file, e);
        }
    }

    /** Takes a file away; it stays under the name with .bak added. */
    void remove(Path file) throws WorkspaceException {
        try {
            if (Files.exists(file)) {
                storage.replace(file, backupOf(file));
                storage.forceFolder(file.getParent());
            }
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw failure(file, e);
        }
    }

    static Path backupOf(Path file) {
        return file.resolveSibling(file.getFileName() + BACKUP);
    }

    /** What a failed write means for the person: no right, no space, or something else. */
    static WorkspaceException failure(Path file, Exception e) {
        String cause = causeOf(e);
        String lower = cause.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space") || lower.contains("disk quota")) {
            return new WorkspaceException(FileProblem.DISK_FULL, file, e, cause);
        }
        if (e instanceof AccessDeniedException || e instanceof ReadOnlyFileSystemException || lower.contains("read-only")
                || lower.contains("permission denied")) {
            return new WorkspaceException(FileProblem.READ_ONLY, file, e, cause);
        }
        return new WorkspaceException(FileProblem.WRITE_FAILED, file, e, cause);
    }

    private static String causeOf(Exception e) {
        if (e instanceof AccessDeniedException) {
            return "access denied";
        }
        if (e instanceof FileSystemException f && f.getReason() != null) {
            return f.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private static Path besideOf(Path file, String suffix) {
        return file.resolveSibling("." + file.getFileName() + suffix);
    }

    private static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It is swept away when the workspace is next opened.
        }
    }
}
