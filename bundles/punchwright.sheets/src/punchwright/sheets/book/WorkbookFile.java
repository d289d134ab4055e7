// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

import punchwright.sheets.SheetException;

/**
 * Writes a workbook whole or not at all: beside, forced to disk, renamed over. What stood there before stays when a step fails.
 * The parts of the file get one fixed date, so that the same content gives the same bytes.
 */
public class WorkbookFile {

    /** The earliest date that the zip format knows. */
    private static final LocalDateTime ZIP_DATE = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Texts texts;

    public WorkbookFile(Texts texts) {
        this.texts = texts;
    }

    /** Name of a workbook from its kind and the numbers it is about; a character that a file system may refuse becomes "_". */
    public static String name(String kind, String... numbers) {
        return (kind + "-" + String.join("-", numbers)).replaceAll("[^A-Za-z0-9._-]", "_") + ".xlsx";
    }

    /** Writes the content of an OOXML file. */
    public void write(Path file, byte[] content) throws SheetException {
        Path target = file.toAbsolutePath();
        Path beside = target.resolveSibling("." + target.getFileName() + ".tmp");
        try {
            Files.createDirectories(target.getParent());
            force(beside, withFixedDates(content));
            replace(beside, target);
        } catch (IOException | java.nio.file.ReadOnlyFileSystemException e) {
            deleteQuietly(beside);
            throw failure(target, e);
        }
    }

    /** Writes bytes to the disk; a test puts a full disk in its place. */
    protected void force(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void replace(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void deleteQuietly(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The failure that is reported is the first one; a leftover beside the file harms nothing.
        }
    }

    private SheetException failure(Path file, Exception e) {
        String reason = e instanceof FileSystemException f && f.getReason() != null ? f.getReason()
                : String.valueOf(e.getMessage());
        String lower = reason.toLowerCase(Locale.ROOT);
        String kind = "failed";
        if (lower.contains("no space") || lower.contains("not enough space") || lower.contains("quota")) {
            kind = "full";
        } else if (e instanceof AccessDeniedException || e instanceof java.nio.file.ReadOnlyFileSystemException
                || lower.contains("read-only") || lower.contains("permission")) {
            kind = "readonly";
        }
        return new SheetException(file, texts.get("file." + kind + ".message", reason), texts.get("file." + kind + ".remedy"), e);
    }

    private static byte[] withFixedDates(byte[] content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(content.length);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(content));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry fixed = new ZipEntry(entry.getName());
                fixed.setTimeLocal(ZIP_DATE);
                out.putNextEntry(fixed);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
