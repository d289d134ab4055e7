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
}
