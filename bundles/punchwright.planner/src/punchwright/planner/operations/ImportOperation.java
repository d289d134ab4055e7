// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.plan.Finding;
import punchwright.planner.convert.ShopLayerRules;
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
        return "FILE|FOLDER... [--json]";
    }

    @Override
    public Set<String> options() {
        return Set.of("json");
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().isEmpty()) {
            throw new UsageException("import takes at least one file or folder");
        }
        Reading reading = new Reading(options(call.workspace()));
        for (String word : call.words()) {
            for (Path file : files(Path.of(word))) {
                call.progress().check();
                call.progress().at(file.toString(), 0);
                reading.read(file);
            }
        }
        return reading.outcome();
    }

    /** By the layer rules of the workspace, where there is one. */
    private static DrawingOptions options(Path workspace) throws IOException {
        if (!Files.exists(workspace.resolve(WorkspacePaths.LIBRARY))) {
            return DrawingOptions.USUAL;
        }
        try (Workspace shop = Workspace.open(workspace, Workspace.Access.READ)) {
            return DrawingOptions.USUAL.withLayerRules(ShopLayerRules.of(shop.library()));
        }
    }

    private static List<Path> files(Path given) throws IOException {
        if (!Files.isDirectory(given)) {
            return List.of(given);
        }
        try (Stream<Path> all = Files.walk(given)) {
            return all.filter(f -> f.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".dxf")).sorted().toList();
        }
    }

    /** Drawings read so far. */
    private static final class Reading {

        private final List<String> lines = new ArrayList<>();
        private final List<Finding> findings = new ArrayList<>();
        private final List<Map<String, Object>> records = new ArrayList<>();
        private final DrawingOptions options;
        private boolean refused;

        Reading(DrawingOptions options) {
            this.options = options;
        }

        void read(Path file) {
            try {
                DrawingResult made = DrawingReader.read(file, options);
                findings.addAll(PlanWriter.findings(made.findings()));
                records.add(DrawingRecord.of(DrawingReadings.of(file, made), List.of()));
                lines.add(String.format(Locale.ROOT, "%s: %d parts, %d closed contours, %d open chains", file,
                        made.shapes().size(), made.loops().size(), made.openChains().size()));
                for (int i = 0; i < made.shapes().size(); i++) {
                    lines.add("  " + describe(i + 1, made.shapes().get(i), file));
                }
            } catch (DrawingException e) {
                refuse(file, e);
            }
        }

        private void refuse(Path file, DrawingException e) {
            refused = true;
            List<punchwright.engine.finding.Finding> all = new ArrayList<>(List.of(e.finding()));
            all.addAll(e.others());
            records.add(record(file, all));
            findings.addAll(PlanWriter.findings(all));
        }

        /** Figures of a drawing that gives no part, where it can be read at all. */
        private Map<String, Object> record(Path file, List<punchwright.engine.finding.Finding> why) {
            try {
                return DrawingRecord.of(DrawingReadings.survey(file, options), why);
            } catch (DrawingException e) {
                return DrawingRecord.refused(file.toString(), why);
            }
        }

        Outcome outcome() {
            return new Outcome(refused ? ExitCode.INPUT : ExitCode.GOOD, lines, findings, List.of(), List.of(), records);
        }

        private static String describe(int number, Shape shape, Path file) {
            Bounds b = shape.bounds();
            FeatureSet features = FeatureRecognition.recognise(file.getFileName() + "#" + number, shape);
            long openings = features.features().stream().filter(f -> f.isOpening()).count();
            return String.format(Locale.ROOT,
                    "part %d: %.2f x %.2f mm, area %.1f mm2, cut length %.1f mm, %d openings, %d edges", number, b.width(),
                    b.height(), shape.areaMm2(), shape.cutLengthMm(), openings, features.features().size() - openings);
        }
    }
}
