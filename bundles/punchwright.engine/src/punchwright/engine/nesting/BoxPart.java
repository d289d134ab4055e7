// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;

/**
 * A part seen as its bounding boxes.
 *
 * @param part    what is needed
 * @param turns   one for each distinct box size among the allowed angles, the first angle of each size
 * @param areaMm2 area of the true shape
 */
record BoxPart(NestPart part, List<Turn> turns, double areaMm2) {

    static BoxPart of(NestPart part) {
        List<Turn> turns = new ArrayList<>();
        for (double angle : part.anglesDeg()) {
            Turn turn = Turn.of(part.shape(), angle);
            if (turns.stream().noneMatch(turn::sameSize)) {
                turns.add(turn);
            }
        }
        return new BoxPart(part, List.copyOf(turns), part.shape().areaMm2());
    }

    boolean fits(Region region) {
        return turns.stream().anyMatch(t -> t.length() <= region.length() && t.width() <= region.width());
    }

    long boxArea() {
        return (long) turns.get(0).length() * turns.get(0).width();
    }

    int longSide() {
        return Math.max(turns.get(0).length(), turns.get(0).width());
    }

    int shortSide() {
        return Math.min(turns.get(0).length(), turns.get(0).width());
    }
}
