// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Pose;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;

/** The tool that makes an opening or a form in one hit: shape, size, corner radius and, where it cannot be turned, its angle. */
public final class ExactTool {

    private ExactTool() {
    }

    /** Empty for an edge and for a form that is not named. */
    public static Optional<ToolSize> of(Feature f, Machine machine) {
        if (f.kind() == FeatureKind.FORM) {
            return Stream.of(ToolShape.values()).filter(s -> s.forms() && s.name().equals(f.form().toUpperCase(Locale.ROOT)))
                    .map(s -> ToolSize.plain(s, f.lengthMm(), f.widthMm(), 0, angle(f, machine, f.lengthMm(), 2))).findFirst();
        }
        return f.isOpening() ? Optional.of(opening(f, machine)) : Optional.empty();
    }

    /** Whether a place of the machine turns a tool of this diameter. */
    public static boolean turns(Machine machine, double diameterMm) {
        return machine.places().stream().filter(Place::turns).anyMatch(p -> diameterMm <= p.maxToolDiameterMm() + 1e-6);
    }

    private static ToolSize opening(Feature f, Machine machine) {
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
        ToolSize straight = ToolSize.plain(shape, f.lengthMm(), f.widthMm(), f.cornerRadiusMm(), 0);
        int order = ToolFootprint.symmetryOrder(straight.make(List.of(), List.of(), 0));
        double corner = shape == ToolShape.RECTANGLE ? f.cornerRadiusMm() : 0;
        return ToolSize.plain(shape, f.lengthMm(), f.widthMm(), corner, angle(f, machine, straight.diameterMm(), order));
    }

    /** Angle that the tool must stand at: 0 where it can be turned or set in quarters. */
    private static double angle(Feature f, Machine machine, double diameterMm, int order) {
        if (order == 0 || turns(machine, diameterMm)) {
            return 0;
        }
        double period = order % 4 == 0 ? 360.0 / order : 90;
        double angle = ((f.angleDeg() % period) + period) % period;
        return angle < 0.01 || period - angle < 0.01 ? 0 : angle;
    }

    private static ToolSize freeContour(Feature f) {
        Bounds b = f.contour().bounds();
        Contour c = f.contour().moved(Pose.at(-b.center().x(), -b.center().y(), 0)).oriented(true);
        return new ToolSize(ToolShape.FREE_CONTOUR, Math.max(b.width(), b.height()), Math.min(b.width(), b.height()), 0, 0,
                List.of(), c);
    }
}
