// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.Work;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import punchwright.engine.finding.Finding;

/** Entry point of the layout stage: parts of one material and thickness onto sheets in stock, at the least material price. */
public final class Nester {

    private static final double KEEP_REMNANT_MM = 300;

    private final NestingJob job;
    private final List<Finding> findings = new ArrayList<>();
    private final Work work;
    private final Stock stock;

    private Nester(NestingJob job) {
        this.job = job;
        this.work = new Work(Math.max(1, job.workLimit()));
        this.stock = new Stock(job, findings);
    }

    /**
     * Lays out every part that fits a sheet, in exactly the quantity asked for or as many as the stock allows.
     *
     * @throws IllegalArgumentException when a quantity is below 1, a part has no allowed angle, or a size, margin or price
     *                                  is negative or not a number; the message names the part or sheet and the value
     */
    public static Nesting nest(NestingJob job) {
        JobCheck.check(Objects.requireNonNull(job, "job"));
        return new Nester(job).run();
    }

    private Nesting run() {
        List<BoxPart> parts = new ArrayList<>();
        for (NestPart part : job.parts()) {
            BoxPart boxes = BoxPart.of(part);
            if (stock.isEmpty() || stock.takes(boxes)) {
                parts.add(boxes);
            } else {
                findings.add(StockFindings.tooLarge(boxes, stock, job));
            }
        }
        if (stock.isEmpty()) {
            findings.add(Finding.of(NestingReason.NO_SHEET, "stock", job.offers().size(), job.maxLengthMm(), job.maxWidthMm(),
                    job.maxMassKg()));
            return new Nesting(List.of(), 0, 0, findings);
        }
        return parts.isEmpty() ? new Nesting(List.of(), 0, 0, findings) : result(parts, propose(parts));
    }

    private Proposal propose(List<BoxPart> parts) {
        int[] wanted = parts.stream().mapToInt(p -> p.part().quantity()).toArray();
        if (parts.size() == 1) {
            return new SinglePlanner(stock, parts, work).plan(0, wanted[0]);
        }
        Proposal best = new MixedPlanner(stock, parts, wanted, work).plan(job.seed());
        if (work.spent(0.9)) {
            findings.add(Finding.of(NestingReason.WORK_LIMIT, "layout", job.workLimit()));
        }
        return best;
    }

    private Nesting result(List<BoxPart> parts, Proposal proposal) {
        List<Layout> layouts = layouts(parts, proposal);
        double partArea = 0;
        double grown = 0;
        int[] missing = parts.stream().mapToInt(p -> p.part().quantity()).toArray();
        for (FilledSheet s : proposal.sheets()) {
            for (BoxPlacement b : s.boxes()) {
                missing[b.part()] -= s.runs();
                partArea += s.runs() * parts.get(b.part()).areaMm2();
            }
        }
        for (BoxPart p : parts) {
            grown += p.part().quantity() * MaterialBound.grownPart(p);
        }
        findings.addAll(new StockFindings(stock, parts, job).shortages(missing));
        remnants(parts, proposal);
        double bound = new MaterialBound(stock, parts).sheetAreaMm2(grown);
        return new Nesting(layouts, proposal.areaMm2() == 0 ? 0 : partArea / proposal.areaMm2(), bound, findings);
    }

    /** Remnants first; layouts that are the same are one with the runs added. */
    private List<Layout> layouts(List<BoxPart> parts, Proposal proposal) {
        Map<List<Object>, Layout> merged = new LinkedHashMap<>();
        for (boolean remnant : new boolean[] {true, false}) {
            for (FilledSheet s : proposal.sheets()) {
                if (stock.offer(s.offer()).remnant() == remnant) {
                    Layout layout = layout(s, parts);
                    merged.merge(List.of(layout.sheet(), layout.placements()), layout,
                            (a, b) -> new Layout(a.sheet(), a.placements(), a.runs() + b.runs()));
                }
            }
        }
        return List.copyOf(merged.values());
    }

    private Layout layout(FilledSheet sheet, List<BoxPart> parts) {
        Region region = stock.region(sheet.offer());
        List<Placement> placements = new ArrayList<>();
        for (BoxPlacement b : sheet.boxes()) {
            BoxPart part = parts.get(b.part());
            placements.add(new Placement(part.part().id(), part.turns().get(b.turn())
                    .poseAt(region.xMm() + Ticks.mm(b.x()), region.yMm() + Ticks.mm(b.y()))));
        }
        return new Layout(stock.offer(sheet.offer()), placements, sheet.runs());
    }

    private void remnants(List<BoxPart> parts, Proposal proposal) {
        for (int i = 0; i < proposal.sheets().size(); i++) {
            FilledSheet s = proposal.sheets().get(i);
            SheetOffer offer = stock.offer(s.offer());
            double reach = stock.region(s.offer()).xMm() + s.boxes().stream()
                    .mapToDouble(b -> Ticks.mm(b.x()) + Ticks.mm(parts.get(b.part()).turns().get(b.turn()).length())).max()
                    .orElse(0);
            double rest = offer.lengthMm() - reach - job.edgeMm();
            if (rest >= KEEP_REMNANT_MM && offer.widthMm() >= KEEP_REMNANT_MM) {
                findings.add(Finding.of(NestingReason.REMNANT_LEFT, "layout " + (i + 1), i + 1, rest, offer.widthMm(),
                        offer.id()));
            }
        }
    }
}
