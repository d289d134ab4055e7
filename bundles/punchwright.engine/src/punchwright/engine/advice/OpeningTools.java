// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;
import java.util.Locale;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Pose;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolShape;

/**
 * Tools for openings and forms that one hit does not make today: the exact tool (shape, size, corner radius, angle), and, where
 * it
 * is too large for any place, rectangular tools that cut it in fewer hits.
 */
final class OpeningTools {

    private static final int MOST_SLICES = 4;

    private final Drafts drafts;

    OpeningTools(Drafts drafts) {
        this.drafts = drafts;
    }

    void add(FeatureWays ways, BookPart part, Machine machine) {
        int hits = ways.alternatives().stream().filter(a -> a.chosen()).mapToInt(a -> a.hits()).findFirst()
                .orElse(Integer.MAX_VALUE);
        if (hits <= ways.features().size()) {
            return;
        }
        for (Feature f : ways.features()) {
            if (f.kind() == FeatureKind.FORM) {
                drafts.add(Draft.plain(ToolShape.valueOf(f.form().toUpperCase(Locale.ROOT)), f.lengthMm(), f.widthMm(), 0,
                        angle(f,
                        machine, f.lengthMm(), 2)), part, machine);
            } else if (f.isOpening()) {
                opening(f, part, machine);
            }
        }
    }

    private void opening(Feature f, BookPart part, Machine machine) {
        Draft exact = exact(f, machine);
        drafts.add(exact, part, machine);
        if (!Drafts.fits(exact, machine)) {
            slices(f, part, machine);
        }
    }

    private static Draft exact(Feature f, Machine machine) {
        ToolShape shape = switch (f.kind()) {
            case ROUND -> ToolShape.ROUND;
            case SQUARE -> ToolShape.SQUARE;
            case RECTANGLE, ROUNDED_RECTANGLE -> ToolShape.RECTANGLE;
            case OBROUND -> ToolShape.OBROUND;
            case SINGLE_FLAT -> ToolShape.SINGLE_FLAT;
            case DOUBLE_FLAT -> ToolShape.DOUBLE_FLAT;
            case HEXAGON -> ToolShape.HEXAGON;
            case TRIANGLE -> ToolShape.TRIANGLE;
            default -> ToolShape.FREE_CONTOUR;
        };
        if (shape == ToolShape.FREE_CONTOUR) {
            return freeContour(f);
        }
        Draft straight = Draft.plain(shape, f.lengthMm(), f.widthMm(), f.cornerRadiusMm(), 0);
        double diameter = Tools.diameterMm(straight);
        int order = ToolFootprint.symmetryOrder(Tools.make(straight, List.of(), 0));
        double angle = angle(f, machine, diameter, order);
        double corner = shape == ToolShape.RECTANGLE ? f.cornerRadiusMm() : 0;
        return Draft.plain(shape, f.lengthMm(), f.widthMm(), corner, angle);
    }

    /** Angle that the tool must stand at: 0 where it can be turned or set in quarters. */
    private static double angle(Feature f, Machine machine, double diameterMm, int order) {
        if (order == 0 || Drafts.turns(machine, diameterMm)) {
            return 0;
        }
        double period = order % 4 == 0 ? 360.0 / order : 90;
        double angle = ((f.angleDeg() % period) + period) % period;
        return angle < 0.01 || period - angle < 0.01 ? 0 : angle;
    }

    private static Draft freeContour(Feature f) {
        Bounds b = f.contour().bounds();
        Contour c = f.contour().moved(Pose.at(-b.center().x(), -b.center().y(), 0)).oriented(true);
        return new Draft(ToolShape.FREE_CONTOUR, Math.max(b.width(), b.height()), Math.min(b.width(), b.height()), 0, 0,
                List.of(),
                c);
    }

    /** Tools as wide as the opening that cut it in a few slices, and squares that go around its corners. */
    private void slices(Feature f, BookPart part, Machine machine) {
        if (f.kind() != FeatureKind.RECTANGLE && f.kind() != FeatureKind.SQUARE) {
            return;
        }
        for (int n = 2; n <= MOST_SLICES; n++) {
            double slice = Math.ceil(f.lengthMm() / n + 2);
            drafts.add(Draft.plain(slice == f.widthMm() ? ToolShape.SQUARE : ToolShape.RECTANGLE, Math.max(f.widthMm(), slice),
                    Math.min(f.widthMm(), slice), 0, 0), part, machine);
            double side = Math.ceil(f.widthMm() / n + 2);
            drafts.add(Draft.plain(ToolShape.SQUARE, side, side, 0, 0), part, machine);
        }
    }
}
