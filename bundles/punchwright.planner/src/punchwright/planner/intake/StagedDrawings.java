// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import punchwright.engine.planning.Progress;

/**
 * Copies of drawings on their way into the workspace: first beside their later place, then moved there all together. A
 * drawing that is there already with the same content is not copied; one of the same name and other content is left alone and
 * the copy gets a number.
 */
final class StagedDrawings {

    private final Path folder;
    private final Path staging;
    private final Map<Path, Path> targets = new LinkedHashMap<>();
    private final Map<Path, Path> staged = new LinkedHashMap<>();
    private final Set<Path> taken = new LinkedHashSet<>();
    private final List<Path> moved = new ArrayList<>();

    /** @param folder the folder for drawings of the workspace */
    StagedDrawings(Path folder) throws IOException {
        this.folder = folder;
        Files.createDirectories(folder);
        staging = Files.createTempDirectory(folder, ".taking-in");
    }

    /** Copies the drawings; asks between them whether to go on. */
    void copy(Set<Path> drawings, Progress progress) throws IOException {
        int done = 0;
        for (Path drawing : drawings) {
            progress.check();
            progress.at(drawing.getFileName().toString(), done++ / (double) drawings.size());
            Path source = drawing.toAbsolutePath().normalize();
            if (source.startsWith(folder) && !source.startsWith(staging)) {
                targets.put(drawing, source);
                continue;
            }
            Path target = target(source);
            targets.put(drawing, target);
            if (!Files.exists(target) && taken.add(target)) {
                Path copy = staging.resolve(Integer.toString(staged.size()));
                Files.copy(source, copy);
                staged.put(copy, target);
            }
        }
    }

    private Path target(Path source) throws IOException {
        String name = source.getFileName().toString();
        int point = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        Path target = folder.resolve(name);
        for (int number = 2; !isFor(target, source); number++) {
            target = folder.resolve(name.substring(0, point) + "-" + number + name.substring(point));
        }
        return target;
    }

    /** Whether a place is free or holds, or will hold, the same content. */
    private boolean isFor(Path target, Path source) throws IOException {
        if (Files.exists(target)) {
            return Files.isRegularFile(target) && Files.mismatch(source, target) < 0;
        }
        for (Map.Entry<Path, Path> copy : staged.entrySet()) {
            if (copy.getValue().equals(target)) {
                return Files.mismatch(source, copy.getKey()) < 0;
            }
        }
        return true;
    }

    /** Moves all copies to their place. */
    void move() throws IOException {
        for (Map.Entry<Path, Path> copy : staged.entrySet()) {
            Files.move(copy.getKey(), copy.getValue(), StandardCopyOption.ATOMIC_MOVE);
            moved.add(copy.getValue());
        }
        dropStaging();
    }

    /** Where a drawing stands, or will stand, in the workspace. */
    Path place(Path drawing) {
        return targets.get(drawing);
    }

    /** The files that are new in the workspace. */
    List<Path> moved() {
        return List.copyOf(moved);
    }

    /** Takes everything back that was copied or moved. */
    void takeBack() throws IOException {
        for (Path file : moved) {
            Files.deleteIfExists(file);
        }
        moved.clear();
        dropStaging();
    }

    private void dropStaging() throws IOException {
        if (Files.isDirectory(staging)) {
            try (Stream<Path> left = Files.list(staging)) {
                for (Path file : left.toList()) {
                    Files.deleteIfExists(file);
                }
            }
            Files.deleteIfExists(staging);
        }
    }
}
