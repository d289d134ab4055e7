// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.press.Place;

/**
 * Something that needs one place: a tool at one setting, or a holder with its inserts.
 *
 * @param used        the tool; null for a holder
 * @param angleDeg    its setting where it need not turn
 * @param needsTurn   whether the place must turn
 * @param holder      the holder; null for a tool alone
 * @param inserts     what stands in the holder, in order of inserts
 * @param diameterMm  what the place must take
 * @param forceN      what the place must carry, reserve included
 * @param hits        hits on the sheet
 */
record Stand(UsedTool used, double angleDeg, boolean needsTurn, Holder holder, List<Stand> inserts, double diameterMm,
        double forceN, int hits) {

    static Stand alone(UsedTool used, double angleDeg, boolean needsTurn, double reserve) {
        return new Stand(used, angleDeg, needsTurn, null, List.of(), ToolFootprint.circumscribedDiameterMm(used.tool()),
                used.forceN() * reserve, used.hits());
    }

    static Stand of(Holder holder, List<Stand> inserts) {
        double force = inserts.stream().mapToDouble(Stand::forceN).max().orElse(0);
        return new Stand(null, 0, false, holder, List.copyOf(inserts), holder.outerDiameterMm(), force,
                inserts.stream().mapToInt(Stand::hits).sum());
    }

    /** Whether it can sit in an insert of the holder. */
    boolean fits(Holder h) {
        return holder == null && diameterMm <= h.maxInsertDiameterMm() + 1e-6 && forceN <= h.forceLimitN()
                && (!needsTurn || h.insertsTurn());
    }

    /** Whether the seat takes it. */
    boolean fits(Place place) {
        boolean size = diameterMm <= place.maxToolDiameterMm() + 1e-6 && forceN <= place.forceLimitN();
        return size && (holder == null || place.takesHolder()) && (!needsTurn || place.turns());
    }
}
