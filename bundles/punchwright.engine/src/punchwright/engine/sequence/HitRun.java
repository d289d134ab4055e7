// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;

/** Hits that stay together in this order or in the opposite one. */
record HitRun(List<SheetHit> hits) {

    HitRun {
        hits = List.copyOf(hits);
    }

    SheetHit first() {
        return hits.getFirst();
    }

    SheetHit last() {
        return hits.getLast();
    }

    /** Backward; the hits of one form in one place keep their order. */
    HitRun reversed() {
        if (first().role() == HitRole.FORM && first().at().equals(last().at())) {
            return this;
        }
        List<SheetHit> back = new ArrayList<>(hits);
        Collections.reverse(back);
        return new HitRun(back);
    }
}
