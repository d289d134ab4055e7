// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;

/**
 * All hits of a sheet in the order of the run, holding by holding, tool by tool.
 *
 * @param parks  sheet places moved under the tool axis after the last hit of a holding, by its index from 0, so that the hold-down
 *               of the reposition presses on no form; where none is given the sheet stays where it is
 */
public record Sequence(List<SequencedHit> hits, List<Finding> findings, Map<Integer, Point> parks) {

    public Sequence {
        hits = List.copyOf(hits);
        findings = List.copyOf(findings);
        parks = Collections.unmodifiableMap(new TreeMap<>(parks));
    }

    /** Without moves before repositions. */
    public Sequence(List<SequencedHit> hits, List<Finding> findings) {
        this(hits, findings, Map.of());
    }
}
