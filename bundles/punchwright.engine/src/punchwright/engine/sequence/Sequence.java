// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.List;

import punchwright.engine.finding.Finding;

/** All hits of a sheet in the order of the run, holding by holding, tool by tool. */
public record Sequence(List<SequencedHit> hits, List<Finding> findings) {

    public Sequence {
        hits = List.copyOf(hits);
        findings = List.copyOf(findings);
    }
}
