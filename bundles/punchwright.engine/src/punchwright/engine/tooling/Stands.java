// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The ways a tool can stand ready for the angles it is needed at: once where the seat turns it, or once for each setting. The one
 * home of this question for the choice of an order and the loading of places.
 */
final class Stands {

    private final Seats seats;
    private final double reserve;

    Stands(Seats seats, double reserve) {
        this.seats = seats;
        this.reserve = reserve;
    }

    /**
     * @param ways       alternatives, each with the stands it takes; empty when the tool cannot be set
     * @param impossible an angle that cannot be set; NaN when all can
     * @param settings   different settings needed
     */
    record Found(List<List<Stand>> ways, double impossible, int settings) {
    }

    Found of(Tool tool, Collection<Double> anglesDeg, int hits, double forceN) {
        int order = ToolFootprint.symmetryOrder(tool);
        TreeMap<Double, Double> settings = new TreeMap<>();
        double impossible = Double.NaN;
        for (double a : anglesDeg) {
            OptionalDouble set = AngleFit.angleDeg(tool, false, a);
            settings.put(AngleFit.canonicalDeg(a, order), set.orElse(0));
            impossible = set.isEmpty() ? a : impossible;
        }
        boolean one = Double.isNaN(impossible) && settings.size() == 1;
        UsedTool used = new UsedTool(tool, List.copyOf(anglesDeg), hits, forceN);
        List<List<Stand>> ways = new ArrayList<>();
        if (!one && tool.freedom() == AngleFreedom.ANY && seats.fitting(ToolFootprint.circumscribedDiameterMm(tool),
                forceN * reserve)
                .stream().anyMatch(Seat::turns)) {
            ways.add(List.of(Stand.alone(used, 0, true, reserve)));
        }
        if (Double.isNaN(impossible) && settings.size() <= tool.onHand()) {
            ways.add(settings.values().stream().map(a -> Stand.alone(used, a, false, reserve)).toList());
        }
        return new Found(ways, impossible, settings.size());
    }
}
