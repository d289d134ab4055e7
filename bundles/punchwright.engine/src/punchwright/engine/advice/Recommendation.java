// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

/**
 * One row of the ranking.
 *
 * @param rank          from 1
 * @param addition      what to buy
 * @param saving        what it saves in a year
 * @param paybackYears  price over what flows back in a year; infinite when nothing does
 * @param mostPerYear   bound on the yearly saving that was known before it was worked out
 * @param makesPossible what it makes possible
 * @param parts         where it saves, most first
 */
public record Recommendation(int rank, Addition addition, Saving saving, double paybackYears, double mostPerYear,
        List<MadePossible> makesPossible, List<PartSaving> parts) {

    public Recommendation {
        makesPossible = List.copyOf(makesPossible);
        parts = List.copyOf(parts);
    }
}
