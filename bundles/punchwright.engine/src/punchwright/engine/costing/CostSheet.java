// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;
import java.util.Optional;

import punchwright.engine.finding.Finding;

/** All figures of one calculation in the order in which they are worked out; inputs before what uses them. */
public record CostSheet(String title, String currency, List<CostCell> cells, List<Finding> findings) {

    public CostSheet {
        cells = List.copyOf(cells);
        findings = List.copyOf(findings);
    }

    public Optional<CostCell> cell(String name) {
        return cells.stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** Value of a cell that must be there. */
    public double value(String name) {
        return cell(name).orElseThrow(() -> new IllegalArgumentException("no cost cell " + name + " in " + title)).value();
    }
}
