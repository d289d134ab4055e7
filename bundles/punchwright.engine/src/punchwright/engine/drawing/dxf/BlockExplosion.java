// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.FindingCollector;

/**
 * Unfolds block references. First the number of curves is computed block by block, so that a small file which stands for
 * 10^10 curves is refused before any work; cycles and unknown blocks are found on the way and left out.
 */
final class BlockExplosion {

    private static final int DEEPEST = 64;
    private static final long VISITING = -1;

    private final Map<String, Block> blocks;
    private final long limit;
    private final FindingCollector findings;
    private final Map<Block, Long> weights = new IdentityHashMap<>();
    private final Map<String, Integer> missing = new HashMap<>();
    private final Set<BlockReference> left = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<String> path = new ArrayList<>();
    private final List<DrawnCurve> curves = new ArrayList<>();
    private final List<DrawnNote> notes = new ArrayList<>();

    BlockExplosion(Map<String, Block> blocks, long limit, FindingCollector findings) {
        this.blocks = blocks;
        this.limit = limit;
        this.findings = findings;
    }

    void explode(Block modelSpace) throws DxfException {
        long weight = weight(modelSpace, 0);
        if (weight > limit) {
            throw new DxfException(Finding.of(DxfReason.TOO_MANY_CURVES, findings.subject(), (double) weight, limit));
        }
        curves.addAll(modelSpace.curves);
        notes.addAll(modelSpace.notes);
        for (BlockReference insert : modelSpace.inserts) {
            unfold(insert, Frame.IDENTITY, insert.style());
        }
    }

    List<DrawnCurve> curves() {
        return curves;
    }

    List<DrawnNote> notes() {
        return notes;
    }

    private Block block(BlockReference insert) {
        return blocks.get(insert.block().toUpperCase(Locale.ROOT));
    }

    /** Curves of a block with all that it holds, as a number that stops at the largest long. */
    private long weight(Block block, int depth) {
        Long known = weights.get(block);
        if (known != null) {
            return known;
        }
        weights.put(block, VISITING);
        path.add(block.name);
        long sum = block.notes.size();
        for (DrawnCurve curve : block.curves) {
            for (RawCurve c : curve.curves()) {
                sum += c.weight();
            }
        }
        for (BlockReference insert : block.inserts) {
            sum = saturated(sum + (double) insert.copies() * innerWeight(insert, depth));
        }
        path.remove(path.size() - 1);
        weights.put(block, sum);
        return sum;
    }

    private long innerWeight(BlockReference insert, int depth) {
        Block inner = block(insert);
        if (inner == null) {
            if (missing.merge(insert.block(), 1, Integer::sum) == 1) {
                findings.add(DxfReason.BLOCK_MISSING, insert.block(), insert.place());
            }
        } else if (depth >= DEEPEST) {
            findings.add(DxfReason.BLOCK_DEPTH, insert.block(), DEEPEST);
        } else {
            long weight = weight(inner, depth + 1);
            if (weight != VISITING) {
                if (weight == 0) {
                    left.add(insert);
                }
                return weight;
            }
            findings.add(DxfReason.BLOCK_CYCLE, insert.block(), String.join(" > ", path.subList(1, path.size())));
        }
        left.add(insert);
        return 0;
    }

    private static long saturated(double sum) {
        return sum >= Long.MAX_VALUE ? Long.MAX_VALUE : (long) sum;
    }

    private void unfold(BlockReference insert, Frame outer, Style style) {
        if (left.contains(insert)) {
            return;
        }
        Block block = block(insert);
        for (int row = 0; row < insert.rows(); row++) {
            for (int column = 0; column < insert.columns(); column++) {
                copy(block, outer.after(insert.frame(column, row, block.base)), style);
            }
        }
    }

    private void copy(Block block, Frame frame, Style style) {
        for (DrawnCurve c : block.curves) {
            curves.add(new DrawnCurve(c.style().inside(style), c.curves().stream().map(r -> r.mapped(frame)).toList(), c.closed(),
                    c.place(), c.exact(), c.filled()));
        }
        for (DrawnNote n : block.notes) {
            notes.add(n.mapped(frame, n.style().inside(style)));
        }
        for (BlockReference inner : block.inserts) {
            unfold(inner, frame, inner.style().inside(style));
        }
    }
}
