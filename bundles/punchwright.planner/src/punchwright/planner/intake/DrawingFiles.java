// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

/** Finds drawings in files and folders. */
public final class DrawingFiles {

    private static final String ENDING = ".dxf";

    private DrawingFiles() {
    }

    /** Whether a file's name says that it is a drawing. */
    public static boolean isDrawing(Path file) {
        return file.getFileName() != null && file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ENDING);
    }

    /**
     * The drawings named, and those below folders, each once; a file that is named counts whatever its ending. A folder that
     * cannot be listed is passed over with what is below it.
     *
     * @param stopped asked between files whether to stop
     */
    public static List<Path> below(List<Path> given, BooleanSupplier stopped) {
        Set<Path> found = new LinkedHashSet<>();
        for (Path path : given) {
            Path absolute = path.toAbsolutePath().normalize();
            if (Files.isDirectory(absolute)) {
                addFolder(absolute, found, stopped);
            } else if (Files.isRegularFile(absolute)) {
                found.add(absolute);
            }
        }
        return List.copyOf(found);
    }

    private static void addFolder(Path folder, Set<Path> found, BooleanSupplier stopped) {
        List<Path> inside = new ArrayList<>();
        try (Stream<Path> all = Files.list(folder)) {
            all.sorted().forEach(inside::add);
        } catch (IOException e) {
            return;
        }
        for (Path path : inside) {
            if (stopped.getAsBoolean()) {
                return;
            }
            if (Files.isDirectory(path) && !Files.isSymbolicLink(path)) {
                addFolder(path, found, stopped);
            } else if (isDrawing(path) && Files.isRegularFile(path)) {
                found.add(path);
            }
        }
    }
}
