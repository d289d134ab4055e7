// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

/** One offer (by number) with boxes on it, run a number of times. */
record FilledSheet(int offer, List<BoxPlacement> boxes, int runs) {

    FilledSheet {
        boxes = List.copyOf(boxes);
    }

    /** Boxes of each part on one sheet. */
    int[] counts(int parts) {
        int[] counts = new int[parts];
        boxes.forEach(b -> counts[b.part()]++);
        return counts;
    }

    /** How far the boxes reach along x, in ticks of the region. */
    int toX(List<BoxPart> parts) {
        int to = 0;
        for (BoxPlacement b : boxes) {
            to = Math.max(to, b.x() + parts.get(b.part()).turns().get(b.turn()).length());
        }
        return to;
    }

    /** How far the boxes reach along y, in ticks of the region. */
    int toY(List<BoxPart> parts) {
        int to = 0;
        for (BoxPlacement b : boxes) {
            to = Math.max(to, b.y() + parts.get(b.part()).turns().get(b.turn()).width());
        }
        return to;
    }
}
