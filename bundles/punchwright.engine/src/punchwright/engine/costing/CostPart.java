// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One punched part of the order, whichever lines need it.
 *
 * @param id                 stable id
 * @param label              what a person reads
 * @param work               index in {@link CostJob#works()} of its material and thickness
 * @param piecesPlaced       pieces on all sheets of all runs, 1 or more
 * @param netMassKg          mass of a finished piece, kg
 * @param areaMm2            area of a piece with its web, mm2: its share in the sheets
 * @param timeS              strokes and moves of a piece, s: its share in machine time and set-up
 * @param hitsByTool         hits of a piece by tool id
 * @param programmingMinutes programming of this part, min; 0 when its program stands
 * @param secondary          work after punching
 */
public record CostPart(String id, String label, int work, int piecesPlaced, double netMassKg, double areaMm2, double timeS,
        Map<String, Integer> hitsByTool, double programmingMinutes, List<SecondaryOperation> secondary) {

    public CostPart {
        hitsByTool = Collections.unmodifiableMap(new LinkedHashMap<>(hitsByTool));
        secondary = List.copyOf(secondary);
    }
}
