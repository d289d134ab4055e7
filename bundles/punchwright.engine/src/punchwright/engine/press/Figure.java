// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * A number that tells how it was made.
 *
 * @param name      what it is, for a person
 * @param value     the number
 * @param unit      its unit
 * @param formula   the formula with the numbers put in
 * @param source    where the formula comes from
 * @param findings  warnings, for example an input outside the formula's range
 */
public record Figure(String name, double value, String unit, String formula, String source, List<Finding> findings) {

    public Figure {
        findings = List.copyOf(findings);
    }
}
