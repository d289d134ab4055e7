// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.check.LayoutReason;

/**
 * What the independent check says of pieces on a sheet.
 *
 * @param reason  what is wrong
 * @param pieces  numbers of the pieces concerned, from 1
 * @param finding the whole of it: values, place, text
 */
public record PieceProblem(LayoutReason reason, List<Integer> pieces, Finding finding) {

    public PieceProblem {
        pieces = List.copyOf(pieces);
    }
}
