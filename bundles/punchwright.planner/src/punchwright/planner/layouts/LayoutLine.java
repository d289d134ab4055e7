// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.LayoutFigures;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingCost;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Remnant;

/**
 * The figures of one layout; money and remnants of all its runs.
 *
 * @param number      running number, from 1
 * @param layout      the layout
 * @param pieces      pieces of each part by id on one sheet
 * @param utilisation part area over sheet area, 0 to 1
 * @param cost        what it costs
 * @param remnants    rests worth keeping, of one sheet
 */
public record LayoutLine(int number, Layout layout, Map<String, Integer> pieces, double utilisation, NestingCost cost,
        List<Remnant> remnants) {

    /** Pieces on one sheet. */
    public int pieceCount() {
        return layout.placements().size();
    }

    /** The lines of layouts that one job asked for. */
    public static List<LayoutLine> of(NestingJob job, List<Layout> layouts) {
        List<LayoutLine> lines = new ArrayList<>();
        for (Layout layout : layouts) {
            Nesting figures = LayoutFigures.of(job, List.of(layout));
            Map<String, Integer> pieces = new LinkedHashMap<>();
            layout.placements().forEach(p -> pieces.merge(p.partId(), 1, Integer::sum));
            lines.add(new LayoutLine(lines.size() + 1, layout, pieces, figures.utilisation(), figures.cost(),
                    figures.remnants()));
        }
        return lines;
    }
}
