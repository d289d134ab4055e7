// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

/** One offer (by number) with parts on it, run a number of times. */
record SpotSheet(int offer, List<Spot> spots, int runs) {

    SpotSheet {
        spots = List.copyOf(spots);
    }

    static List<SpotSheet> of(List<FilledSheet> sheets, List<BoxPart> parts, Stock stock) {
        List<SpotSheet> out = new ArrayList<>();
        for (FilledSheet s : sheets) {
            out.add(new SpotSheet(s.offer(), s.boxes().stream().map(b -> Spot.of(b, parts.get(b.part()), stock.region(s.offer())))
                    .toList(), s.runs()));
        }
        return out;
    }

    /** How far the parts reach in x, mm. */
    double toX() {
        return spots.stream().mapToDouble(Spot::toX).max().orElse(0);
    }

    double partAreaMm2(List<BoxPart> parts) {
        return spots.stream().mapToDouble(s -> parts.get(s.part()).areaMm2()).sum();
    }
}
