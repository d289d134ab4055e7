// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

/** One sheet with the parts on it, run a number of times. */
public record Layout(SheetOffer sheet, List<Placement> placements, int runs) {

    public Layout {
        placements = List.copyOf(placements);
    }
}
