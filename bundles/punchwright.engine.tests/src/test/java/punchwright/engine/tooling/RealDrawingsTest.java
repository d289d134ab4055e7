// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.proof.Proof;
import punchwright.engine.proof.ProofHit;
import punchwright.engine.proof.ProofJob;
import punchwright.outside.OutsideData;

/**
 * Validation on real drawings outside the repository: every part is either made, and then the proof stage (code of its own) finds
 * no error, or refused with typed reasons. Skipped without data.
 */
class RealDrawingsTest {

    private static final double THICKNESS_MM = 1.5;
    /** Every this many-th drawing; all with {@code -Dpunchwright.everyDrawing=1}. */
    private static final int EVERY = Integer.getInteger("punchwright.everyDrawing", 12);

    private static List<Path> drawings() throws IOException {
        Path folder = OutsideData.folder("dxf");
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(p -> p.toString().toLowerCase(Locale.ROOT).endsWith(".dxf")).sorted().toList();
        }
    }

    private static List<Tool> tools() {
        List<Tool> tools = new ArrayList<>();
        for (double d : new double[] { 2, 2.5, 3, 3.2, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 8, 9, 10, 12, 14, 16, 18, 20, 25, 30,
                40, 50 }) {
            tools.add(Shop.round(d));
        }
        for (double[] s : new double[][] { { 5, 5 }, { 10, 10 }, { 20, 20 }, { 30, 30 }, { 5, 2 }, { 8, 2 }, { 10, 3 }, { 15, 3 },
                { 20, 4 }, { 30, 5 }, { 56, 5 }, { 76, 5 } }) {
            tools.add(Shop.rectangle(s[0], s[1]));
        }
        tools.add(Shop.tool("C5", ToolShape.CORNER_RADIUS, 30, 30, 5));
        return tools;
    }

    private static List<Shape> parts(Path file) {
        try {
            return DrawingReader.survey(file, DrawingOptions.USUAL).shapes().stream().limit(2).filter(RealDrawingsTest::suits)
                    .map(s -> s.moved(Pose.at(-s.bounds().minX(), -s.bounds().minY(), 0))).toList();
        } catch (DrawingException e) {
            return List.of();
        }
    }

    private static boolean suits(Shape s) {
        Bounds b = s.bounds();
        int segments = s.outer().segments().size() + s.holes().stream().mapToInt(h -> h.segments().size()).sum();
        return b.width() < 1000 && b.height() < 800 && b.width() > 20 && b.height() > 20 && segments < 600;
    }

    private static List<Finding> proof(Shape shape, OperationList list) {
        Pose pose = Pose.at(300, 150, 0);
        List<ProofHit> hits = new ArrayList<>();
        List<Point> joints = new ArrayList<>();
        for (Operation o : list.operations()) {
            for (PartHit h : o.hits()) {
                Point at = pose.apply(h.at());
                hits.add(new ProofHit(hits.size() + 1, at.x(), at.y(), h.angleDeg(), o.tool(), 0));
            }
            o.joints().forEach(j -> joints.add(pose.apply(j.at())));
        }
        ClampArrangement clamps = new ClampArrangement(List.of(200.0, 700.0, 1200.0), 0, 1500, false);
        return Proof.prove(new ProofJob(Shop.press(), Shop.STEEL, THICKNESS_MM, 1500, 1100, List.of(shape.moved(pose)), joints,
                ToolingRules.USUAL.microJointMm(), hits, List.of(clamps), 0.15)).findings();
    }

    @Test
    void madeAndProvenOrRefusedWithReasons() throws IOException {
        List<Path> files = drawings();
        int made = 0;
        List<String> unproven = new ArrayList<>();
        for (int i = 0; i < files.size(); i += EVERY) {
            for (Shape shape : parts(files.get(i))) {
                FeatureSet features = FeatureRecognition.recognise(files.get(i).getFileName().toString(), shape);
                OperationList list = ToolChoice.choose(Shop.job(features, THICKNESS_MM, tools()));
                list.findings().forEach(f -> assertFalse(f.message().isBlank(), f.code()));
                if (list.complete()) {
                    made++;
                    proof(shape, list).stream().filter(Finding::isError)
                            .forEach(f -> unproven.add(features.part() + ": " + f.message() + " " + f.place()));
                }
            }
        }
        assertEquals(List.of(), unproven);
        assertTrue(made >= 10, made + " parts made");
    }
}
