// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import punchwright.engine.geometry.Point;

/**
 * Drops hits that others make needless: identical ones, and those whose share of the edge the others cut as well.
 *
 * <p>Rectangular hits count for one sample less at both of their ends (except at the ends of a segment), so that those that stay
 * overlap. Hits are tried from the one that cuts least; a plain greedy set cover that is never worse than the input.
 */
final class HitReducer {

    private final EdgeSamples samples;
    private final double toleranceMm;

    HitReducer(EdgeSamples samples, double toleranceMm) {
        this.samples = samples;
        this.toleranceMm = toleranceMm;
    }

    /** One hit with its tool. */
    record ToolHit(UsableTool tool, PartHit hit) {
    }

    List<ToolHit> reduce(List<ToolHit> hits) {
        List<ToolHit> kept = distinct(hits);
        List<BitSet> cut = new ArrayList<>(kept.stream().map(this::cut).toList());
        int[] count = new int[samples.size()];
        cut.forEach(set -> set.stream().forEach(i -> count[i]++));
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            order.add(i);
        }
        order.sort((a, b) -> cut.get(a).cardinality() != cut.get(b).cardinality()
                ? Integer.compare(cut.get(a).cardinality(), cut.get(b).cardinality()) : Integer.compare(b, a));
        BitSet dropped = new BitSet();
        for (int i : order) {
            if (cut.get(i).stream().allMatch(s -> count[s] > 1)) {
                dropped.set(i);
                cut.get(i).stream().forEach(s -> count[s]--);
            }
        }
        List<ToolHit> rest = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            if (!dropped.get(i)) {
                rest.add(kept.get(i));
            }
        }
        return uncut(rest) > uncut(kept) ? kept : rest;
    }

    /** Number of samples that no hit cuts. */
    int uncut(List<ToolHit> hits) {
        BitSet all = new BitSet(samples.size());
        hits.forEach(h -> all.or(samples.covered(h.tool().footprint(), h.hit(), toleranceMm)));
        return samples.missing(all);
    }

    private BitSet cut(ToolHit h) {
        BitSet all = samples.covered(h.tool().footprint(), h.hit(), toleranceMm);
        return h.tool().round() ? all : samples.shortened(all);
    }

    private static List<ToolHit> distinct(List<ToolHit> hits) {
        List<ToolHit> distinct = new ArrayList<>();
        for (ToolHit h : hits) {
            if (distinct.stream().noneMatch(d -> same(d, h))) {
                distinct.add(h);
            }
        }
        return distinct;
    }

    private static boolean same(ToolHit a, ToolHit b) {
        Point d = a.hit().at().minus(b.hit().at());
        return a.tool() == b.tool() && d.norm() < 0.002
                && AngleFit.same(a.hit().angleDeg(), b.hit().angleDeg(), ToolFootprint.symmetryOrder(a.tool().tool()));
    }
}
