// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.press.Place;

/**
 * A tool at one setting, which needs one seat.
 *
 * @param used        the tool
 * @param angleDeg    its setting where it need not turn
 * @param needsTurn   whether the seat must turn
 * @param diameterMm  what the seat must take
 * @param forceN      what the seat must carry, reserve included
 * @param hits        hits on the sheet
 */
record Stand(UsedTool used, double angleDeg, boolean needsTurn, double diameterMm, double forceN, int hits) {

    static Stand alone(UsedTool used, double angleDeg, boolean needsTurn, double reserve) {
        return new Stand(used, angleDeg, needsTurn, ToolFootprint.circumscribedDiameterMm(used.tool()),
                used.forceN() * reserve, used.hits());
    }

    /** Whether it can sit in an insert of the holder. */
    boolean fits(Holder h) {
        return diameterMm <= h.maxInsertDiameterMm() + 1e-6 && forceN <= h.forceLimitN() && (!needsTurn || h.insertsTurn());
    }

    /** Whether the place takes it. */
    boolean fits(Place place) {
        return diameterMm <= place.maxToolDiameterMm() + 1e-6 && forceN <= place.forceLimitN() && (!needsTurn || place.turns());
    }
}
