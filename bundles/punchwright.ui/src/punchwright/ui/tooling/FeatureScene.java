// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.PartHit;
import punchwright.model.shop.Tool;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.part.PartShapes;
import punchwright.ui.picture.ToolOutlines;
import punchwright.ui.sheet.HitGroup;
import punchwright.ui.sheet.Scene;

/** The part with the hits of its operations as a scene, and which feature each hit and each place belongs to. */
final class FeatureScene {

    private static final int ARC_PIECES = 24;

    private final PartWeighing weighing;
    private final List<Tool> tools;
    private final Map<String, Integer> balloons;
    private final List<Integer> featureOfHit = new ArrayList<>();
    private final Scene scene;

    /** Tools are records of the library that the weighing was made from. */
    FeatureScene(PartWeighing weighing, List<Tool> tools) {
        this.weighing = weighing;
        this.tools = tools;
        balloons = FeatureLines.balloons(weighing);
        scene = build();
    }

    Scene scene() {
        return scene;
    }

    /** Number of the feature that a hit makes, or -1. */
    int featureOf(int hit) {
        return hit < 0 || hit >= featureOfHit.size() ? -1 : featureOfHit.get(hit);
    }

    /** The feature at a place: the smallest opening round it, else the edge or form within {@code nearMm}. */
    Optional<Feature> featureAt(double x, double y, double nearMm) {
        Point p = new Point(x, y);
        List<Feature> all = weighing.features().features();
        Optional<Feature> inside = all.stream().filter(f -> f.isOpening() && f.contour().contains(p))
                .min((a, b) -> Double.compare(a.contour().areaMm2(), b.contour().areaMm2()));
        return inside.isPresent() ? inside : all.stream().filter(f -> distance(f, p) <= nearMm)
                .min((a, b) -> Double.compare(distance(a, p), distance(b, p)));
    }

    private static double distance(Feature f, Point p) {
        return f.path().isEmpty() ? Math.max(0, f.center().distance(p) - f.lengthMm() / 2)
                : f.path().stream().mapToDouble(s -> s.distance(p)).min().orElse(Double.MAX_VALUE);
    }

    private Scene build() {
        List<Scene.Piece> pieces =
                List.of(Scene.Piece.of(1, weighing.features().part(), PartShapes.outlines(weighing.features().shape())));
        Map<String, HitGroup.Builder> groups = new LinkedHashMap<>();
        List<Scene.Joint> joints = new ArrayList<>();
        for (Operation op : weighing.wished().operations().operations()) {
            HitGroup.Builder group = groups.computeIfAbsent(op.tool().id(), this::group);
            for (PartHit hit : op.hits()) {
                group.add(featureOfHit.size(), 0, hit.at().x(), hit.at().y(), hit.angleDeg());
                featureOfHit.add(op.feature().number());
            }
            op.joints().forEach(j -> joints.add(new Scene.Joint(j.at().x(), j.at().y(), j.widthMm())));
        }
        Bounds box = weighing.features().shape().outer().bounds();
        List<HitGroup> built = groups.values().stream().map(g -> g.build(Math.max(1, box.width()), Math.max(1, box.height())))
                .toList();
        return new Scene(0, 0, pieces, built, List.of(), joints, marks());
    }

    private HitGroup.Builder group(String toolId) {
        Tool tool = tools.stream().filter(t -> t.getId().equals(toolId)).findFirst().orElseThrow();
        return new HitGroup.Builder(balloons.get(toolId), tool.getName(), ToolOutlines.single(tool),
                ToolOutlines.roundDiameter(tool));
    }

    private List<Scene.Mark> marks() {
        return weighing.findings().stream().filter(f -> f.place() != null).filter(Finding::isError)
                .map(f -> new Scene.Mark(f.place().x(), f.place().y(), 0)).toList();
    }

    /** The lines of features, x and y in turn, mm. */
    static List<double[]> lines(List<Feature> features) {
        return features.stream().map(f -> f.path().isEmpty() ? circle(f) : path(f.path())).toList();
    }

    private static double[] circle(Feature f) {
        double[] xy = new double[2 * (ARC_PIECES + 1)];
        for (int k = 0; k <= ARC_PIECES; k++) {
            double a = 2 * Math.PI * k / ARC_PIECES;
            xy[2 * k] = f.center().x() + f.lengthMm() / 2 * Math.cos(a);
            xy[2 * k + 1] = f.center().y() + f.lengthMm() / 2 * Math.sin(a);
        }
        return xy;
    }

    private static double[] path(List<Segment> path) {
        List<Point> points = new ArrayList<>();
        points.add(path.get(0).start());
        for (Segment s : path) {
            int pieces = s instanceof Arc ? ARC_PIECES : 1;
            for (int k = 1; k <= pieces; k++) {
                points.add(s.pointAt((double) k / pieces));
            }
        }
        double[] xy = new double[2 * points.size()];
        for (int k = 0; k < points.size(); k++) {
            xy[2 * k] = points.get(k).x();
            xy[2 * k + 1] = points.get(k).y();
        }
        return xy;
    }
}
