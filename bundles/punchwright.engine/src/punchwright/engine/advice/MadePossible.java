// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.finding.Finding;

/**
 * What cannot be made today and could be with an addition.
 *
 * @param order   number of the order
 * @param machine name of the machine
 * @param part    name of the part
 * @param whole   whether the machine could then make the whole order
 * @param nowhere whether no machine makes it today
 * @param today   the typed reason of today's refusal
 */
public record MadePossible(String order, String machine, String part, boolean whole, boolean nowhere, Finding today) {
}
