// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.geometry.Pose;

/** One part on a sheet: number of the part, its pose on the sheet, and how far it reaches in x, mm. */
record Spot(int part, Pose pose, double toX) {

    static Spot of(BoxPlacement b, BoxPart part, Region region) {
        Turn turn = part.turns().get(b.turn());
        double x = region.xMm() + Ticks.mm(b.x());
        double y = region.yMm() + Ticks.mm(b.y());
        return new Spot(b.part(), turn.poseAt(x, y), x + Ticks.mm(turn.length()));
    }
}
