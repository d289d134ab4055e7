// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Point;

/** Says of a kind of repair how often it was made, and of each where. */
final class RepairNotes {

    private RepairNotes() {
    }

    /**
     * One finding with the number (and {@code more} values) at the first place; where there are several, a note for each.
     *
     * @param all  reason with the number as first argument
     * @param each reason with x and y as arguments
     */
    static void report(FindingCollector findings, ContourReason all, ContourReason each, List<Point> places, Object... more) {
        if (places.isEmpty()) {
            return;
        }
        List<Object> arguments = new ArrayList<>(List.of(places.size()));
        arguments.addAll(Arrays.asList(more));
        findings.addAt(places.get(0), all, arguments.toArray());
        if (places.size() > 1) {
            places.forEach(p -> findings.addAt(p, each, p.x(), p.y()));
        }
    }
}
