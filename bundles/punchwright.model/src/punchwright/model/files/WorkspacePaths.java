// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Where things stand in a workspace, and the guard that no path leaves it. */
public final class WorkspacePaths {

    /** Name of the library file. */
    public static final String LIBRARY = "library.pwlib";
    /** Folder and ending of parts, assemblies and bought items. */
    public static final String PARTS = "parts";
    /** Folder of orders. */
    public static final String ORDERS = "orders";
    /** Folder of plans. */
    public static final String PLANS = "plans";
    /** Folder of drawings. */
    public static final String DRAWINGS = "drawings";
    /** Folder of what is written for others. */
    public static final String OUT = "out";

    static final String PART_ENDING = ".pwpart";
    static final String ORDER_ENDING = ".pworder";
    static final String PLAN_ENDING = ".pwplan";

    private static final Pattern FILE_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,99}");
    private static final Pattern RESERVED = Pattern.compile("(?i)(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?");

    private final Path root;

    WorkspacePaths(Path root) {
        this.root = root;
    }

    /** The workspace folder, absolute. */
    public Path root() {
        return root;
    }

    Path library() {
        return root.resolve(LIBRARY);
    }

    Path fileFor(String folder, String id, String ending) throws WorkspaceException {
        if (id == null || !FILE_NAME.matcher(id).matches() || RESERVED.matcher(id).matches() || id.endsWith(".")) {
            throw new WorkspaceException(FileProblem.BAD_ID, root.resolve(folder), null, String.valueOf(id));
        }
        return root.resolve(folder).resolve(id + ending);
    }

    /** The files of one kind, by name. */
    List<Path> list(String folder, String ending) throws WorkspaceException {
        Path there = root.resolve(folder);
        if (!Files.isDirectory(there)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(there)) {
            return new ArrayList<>(files.filter(f -> isOurs(f, ending)).sorted().toList());
        } catch (IOException e) {
            throw new WorkspaceException(FileProblem.READ_FAILED, there, e, FileFormat.oneLine(e));
        }
    }

    private static boolean isOurs(Path file, String ending) {
        String name = file.getFileName().toString();
        return name.endsWith(ending) && !name.startsWith(".");
    }

    /**
     * Turns a path as it stands in the model into a file.
     *
     * @param relative path relative to the workspace folder, with forward slashes
     * @return the absolute file, which need not exist
     * @throws WorkspaceException when the path is absolute, climbs out of the folder, or leaves it through a link
     */
    public Path resolve(String relative) throws WorkspaceException {
        try {
            Path given = Path.of(relative);
            if (!relative.isBlank() && !given.isAbsolute() && relative.indexOf('\\') < 0 && !relative.matches("[A-Za-z]:.*")) {
                Path file = root.resolve(given).normalize();
                if (holds(file)) {
                    return file;
                }
            }
        } catch (InvalidPathException e) {
            throw new WorkspaceException(FileProblem.OUTSIDE, root, e, relative);
        }
        throw new WorkspaceException(FileProblem.OUTSIDE, root, null, relative);
    }

    /** Whether a file lies inside, also when links are followed. */
    boolean holds(Path file) {
        Path plain = file.toAbsolutePath().normalize();
        if (!plain.startsWith(root)) {
            return false;
        }
        Path existing = plain;
        while (existing != null && !Files.exists(existing)) {
            existing = existing.getParent();
        }
        try {
            return existing != null && (!existing.startsWith(root) || existing.toRealPath().startsWith(root.toRealPath()));
        } catch (IOException e) {
            return false;
        }
    }
}
