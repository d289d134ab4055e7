// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.List;

/** A clamp arrangement and the ids of the hits that are made in it; the next one needs a reposition or a turn. */
public record Holding(int index, ClampArrangement clamps, List<Integer> hitIds) {

    public Holding {
        hitIds = List.copyOf(hitIds);
    }
}
