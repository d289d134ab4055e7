// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import punchwright.engine.finding.FindingCollector;

/** Says after the reading what was left out and how the file ended. */
final class ParseReport {

    private final FindingCollector findings;
    private final DxfContent content;
    private final EntityTarget target;

    ParseReport(FindingCollector findings, DxfContent content, EntityTarget target) {
        this.findings = findings;
        this.content = content;
        this.target = target;
    }

    void write(TagSource tags, boolean eofMark, String lost) throws IOException {
        if (tags.badCodes() > 0) {
            findings.add(DxfReason.BAD_CODE, tags.firstBadCodePlace(), tags.badCodes());
        }
        ending(tags, eofMark, lost);
        types();
        if (content.paperEntities > 0) {
            findings.add(DxfReason.PAPER_SPACE, content.paperEntities);
        }
        Map<String, Integer> degenerate = target.degenerate();
        if (!degenerate.isEmpty()) {
            findings.add(DxfReason.DEGENERATE, degenerate.values().stream().mapToInt(Integer::intValue).sum(), list(degenerate));
        }
    }

    private void ending(TagSource tags, boolean eofMark, String lost) throws IOException {
        if (eofMark) {
            long place = tags.place();
            if (tags.next()) {
                findings.add(DxfReason.AFTER_END_MARK, place);
            }
        } else if (lost.isEmpty() && !tags.endedInsideTag()) {
            findings.add(DxfReason.NO_END_MARK, tags.place());
        } else {
            findings.add(DxfReason.ENDS_EARLY, tags.place(), lost.isEmpty() ? "its end" : lost);
        }
    }

    private void types() {
        Map<String, Integer> known = new TreeMap<>();
        Map<String, Integer> unknown = new TreeMap<>();
        content.entities.forEach((type, n) -> {
            if (EntityHandlers.NOT_CUT.contains(type)) {
                known.put(type, n);
            } else if (!EntityHandlers.TABLE.containsKey(type)) {
                unknown.put(type, n);
            }
        });
        if (!known.isEmpty()) {
            findings.add(DxfReason.NOT_CUT_TYPES, list(known));
        }
        if (!unknown.isEmpty()) {
            findings.add(DxfReason.UNKNOWN_TYPES, list(unknown));
        }
    }

    private static String list(Map<String, Integer> counts) {
        return counts.entrySet().stream().limit(20).map(e -> e.getKey() + " (" + e.getValue() + ")")
                .collect(Collectors.joining(", "));
    }
}
