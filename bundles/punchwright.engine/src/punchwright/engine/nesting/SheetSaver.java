// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.nesting.boxes.Bin;
import punchwright.engine.nesting.boxes.BinBound;
import punchwright.engine.nesting.boxes.BinSearch;
import punchwright.engine.nesting.boxes.BoxSet;
import punchwright.engine.nesting.boxes.Work;

/** Packs all pieces on the sheets of one offer anew, on fewer of them; the dearest group of sheets comes first. */
final class SheetSaver {

    private static final int MOST_PIECES = 5_000;

    private final Stock stock;
    private final List<BoxPart> parts;
    private final Work work;
    private final int web;

    SheetSaver(Stock stock, List<BoxPart> parts, Work work) {
        this.stock = stock;
        this.parts = parts;
        this.work = work;
        this.web = Ticks.of(parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0));
    }

    /** The same pieces on the same offers, with as few sheets as found; complete proposals only. */
    Proposal fewer(Proposal proposal, long seed) {
        Map<Integer, List<FilledSheet>> byOffer = new LinkedHashMap<>();
        proposal.sheets().forEach(s -> byOffer.computeIfAbsent(s.offer(), o -> new ArrayList<>()).add(s));
        List<FilledSheet> sheets = new ArrayList<>();
        byOffer.forEach((offer, group) -> sheets.addAll(fewer(offer, group, seed)));
        return Proposal.of(sheets, new int[parts.size()], stock, parts).missing(proposal.missingMm2());
    }

    private List<FilledSheet> fewer(int offer, List<FilledSheet> group, long seed) {
        int count = group.stream().mapToInt(FilledSheet::runs).sum();
        int pieces = group.stream().mapToInt(s -> s.runs() * s.boxes().size()).sum();
        boolean seated = group.stream().anyMatch(s -> s.boxes().stream().anyMatch(b -> b.y() < 0));
        if (count < 2 || pieces > MOST_PIECES || stock.region(offer).row() || seated) {
            return group;
        }
        int[] partOf = new int[pieces];
        List<Bin> start = bins(group, partOf);
        BoxSet boxes = boxes(partOf);
        int length = stock.region(offer).length() + web;
        int width = stock.region(offer).width() + web;
        int bound = Math.max(1, BinBound.of(boxes, length, width));
        Work own = work.own((long) (work.left() * 0.8));
        List<Bin> found = bound < count ? BinSearch.fewer(boxes, start, length, width, bound, own, seed) : start;
        work.add(own.done());
        return found.size() < count ? sheets(offer, found, partOf) : group;
    }

    private List<Bin> bins(List<FilledSheet> group, int[] partOf) {
        List<Bin> bins = new ArrayList<>();
        int n = 0;
        for (FilledSheet sheet : group) {
            for (int run = 0; run < sheet.runs(); run++) {
                Bin bin = new Bin();
                for (BoxPlacement b : sheet.boxes()) {
                    partOf[n] = b.part();
                    bin.put(n++, b.turn(), b.x(), b.y());
                }
                bins.add(bin);
            }
        }
        return bins;
    }

    private BoxSet boxes(int[] partOf) {
        int[][] lengths = new int[parts.size()][];
        int[][] widths = new int[parts.size()][];
        for (int p = 0; p < parts.size(); p++) {
            lengths[p] = parts.get(p).turns().stream().mapToInt(t -> t.length() + web).toArray();
            widths[p] = parts.get(p).turns().stream().mapToInt(t -> t.width() + web).toArray();
        }
        int[][] l = new int[partOf.length][];
        int[][] w = new int[partOf.length][];
        for (int i = 0; i < partOf.length; i++) {
            l[i] = lengths[partOf[i]];
            w[i] = widths[partOf[i]];
        }
        return new BoxSet(l, w);
    }

    private static List<FilledSheet> sheets(int offer, List<Bin> bins, int[] partOf) {
        List<FilledSheet> sheets = new ArrayList<>();
        for (Bin bin : bins) {
            List<BoxPlacement> boxes = new ArrayList<>();
            for (int i = 0; i < bin.size(); i++) {
                boxes.add(new BoxPlacement(partOf[bin.box(i)], bin.turn(i), bin.x(i), bin.y(i)));
            }
            sheets.add(new FilledSheet(offer, boxes, 1));
        }
        return sheets;
    }
}
