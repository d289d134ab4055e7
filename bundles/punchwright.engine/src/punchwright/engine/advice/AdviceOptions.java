// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * How to look.
 *
 * @param top       how many additions to rank, at least 1
 * @param mostWork  most choices of tools for a part that are worked out before the search stops with a finding
 * @param prices    prices given by the engineer, by id or name of the addition
 * @param pruned    whether the bound saves work; false for checks
 * @param remember  whether parts that an addition does not touch are taken as they are; false for checks
 */
public record AdviceOptions(int top, int mostWork, Map<String, Double> prices, boolean pruned, boolean remember) {

    /** Ten additions, 20,000 choices. */
    public static final AdviceOptions USUAL = new AdviceOptions(10, 20_000, Map.of(), true, true);

    public AdviceOptions {
        prices = Collections.unmodifiableMap(new TreeMap<>(prices));
        if (top < 1 || mostWork < 1) {
            throw new IllegalArgumentException("top " + top + " and work " + mostWork + " must be at least 1");
        }
    }
}
