// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Shape;
import punchwright.model.plan.Finding;
import punchwright.model.plan.Severity;
import punchwright.planner.plans.PlanWriter;

/** Reads drawings and tells what parts and features they show. */
final class ImportOperation implements ShopOperation {

    @Override
    public String name() {
        return "import";
    }

    @Override
    public String summary() {
        return "read drawings and tell the parts and features they show";
    }

    @Override
    public String usage() {
        return "FILE|FOLDER...";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().isEmpty()) {
            throw new UsageException("import takes at least one file or folder");
        }
        List<String> lines = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String word : call.words()) {
            for (Path file : files(Path.of(word))) {
                call.progress().check();
                call.progress().at(file.toString(), 0);
                read(file, lines, findings);
            }
        }
        boolean refused = findings.stream().anyMatch(f -> f.getSeverity() == Severity.ERROR);
        return new Outcome(refused ? ExitCode.INPUT : ExitCode.GOOD, lines, findings, List.of(), List.of());
    }

    private static List<Path> files(Path given) throws IOException {
        if (!Files.isDirectory(given)) {
            return List.of(given);
        }
        try (Stream<Path> all = Files.walk(given)) {
            return all.filter(f -> f.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".dxf")).sorted().toList();
        }
    }

    private static void read(Path file, List<String> lines, List<Finding> findings) {
        try {
            DrawingResult drawing = DrawingReader.read(file, DrawingOptions.USUAL);
            findings.addAll(PlanWriter.findings(drawing.findings()));
            lines.add(String.format(Locale.ROOT, "%s: %d parts, %d closed contours, %d open chains", file,
                    drawing.shapes().size(), drawing.loops().size(), drawing.openChains().size()));
            for (int i = 0; i < drawing.shapes().size(); i++) {
                lines.add("  " + describe(i + 1, drawing.shapes().get(i), file));
            }
        } catch (DrawingException e) {
            findings.add(PlanWriter.finding(e.finding()));
            findings.addAll(PlanWriter.findings(e.others()));
        }
    }

    private static String describe(int number, Shape shape, Path file) {
        Bounds b = shape.bounds();
        FeatureSet features = FeatureRecognition.recognise(file.getFileName() + "#" + number, shape);
        long openings = features.features().stream().filter(f -> f.isOpening()).count();
        return String.format(Locale.ROOT, "part %d: %.2f x %.2f mm, area %.1f mm2, cut length %.1f mm, %d openings, %d edges",
                number, b.width(), b.height(), shape.areaMm2(), shape.cutLengthMm(), openings,
                features.features().size() - openings);
    }
}
