// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.boxes.Work;

/** Entry point of the layout stage: parts of one material and thickness onto sheets in stock, at the least total cost. */
public final class Nester {

    private final NestingJob job;
    private final Watch watch;
    private final List<Finding> findings = new ArrayList<>();
    private final Work work;
    private final Stock stock;

    private Nester(NestingJob job, Watch watch) {
        this.job = job;
        this.watch = watch;
        this.work = new Work(Math.max(1, job.search().workLimit()), watch::cancelled);
        this.stock = new Stock(job, findings);
    }

    /** As {@link #nest(NestingJob, Watch)}, to the end. */
    public static Nesting nest(NestingJob job) {
        return nest(job, Watch.SILENT);
    }

    /**
     * Lays out every part that fits a sheet, in exactly the quantity asked for or as many as the stock allows. When the watch
     * cancels, the best so far is the result.
     *
     * @throws IllegalArgumentException when a quantity is below 1, a part has no allowed angle, or a size, margin or price
     *                                  is negative or not a number; the message names the part or sheet and the value
     */
    public static Nesting nest(NestingJob job, Watch watch) {
        JobCheck.check(Objects.requireNonNull(job, "job"));
        return new Nester(job, watch).run();
    }

    /**
     * One sheet anew: placements whose index is locked stay where they are, the others are placed around them, towards the
     * end with the least x: by their boxes, and by their outlines where the job asks for true shapes and that places more
     * of them, or as many in less length. Pieces that find no room are left out: the caller compares the counts.
     */
    public static Layout around(NestingJob job, Layout layout, Set<Integer> locked, Watch watch) {
        JobCheck.check(Objects.requireNonNull(job, "job"));
        Work work = new Work(Math.max(1, job.search().workLimit()), watch::cancelled);
        Layout boxes = new Around(job, layout, locked, work.own(job.search().workLimit() / 2)).layout();
        if (!job.search().trueShapes() || layout.sheet().bar() || watch.cancelled()) {
            return boxes;
        }
        AroundShapes shapes = new AroundShapes(job, layout, locked, work.own(job.search().workLimit() / 2));
        Layout outlines = shapes.layout();
        int more = outlines == null ? -1 : outlines.placements().size() - boxes.placements().size();
        return more > 0 || more == 0 && shapes.reach(outlines) < shapes.reach(boxes) - 1e-6 ? outlines : boxes;
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
            findings.add(Finding.of(NestingReason.NO_SHEET, "stock", job.offers().size(), job.limits().maxLengthMm(),
                    job.limits().maxWidthMm(), job.limits().maxMassKg()));
            return new Nesting(List.of(), 0, 0, findings);
        }
        return parts.isEmpty() ? new Nesting(List.of(), 0, 0, findings) : result(parts);
    }

    /** First what must be made, then what may be made where it pays, then fillers into the room left. */
    private Nesting result(List<BoxPart> parts) {
        Assembly assembly = new Assembly(job, stock, parts);
        OrderPlanner planner = new OrderPlanner(job, stock, parts);
        SpotCosts costs = new SpotCosts(stock, parts);
        LowerBounds bounds = LowerBounds.of(stock, parts);
        int[] must = parts.stream().mapToInt(p -> p.part().want() == Want.MUST ? p.part().quantity() : 0).toArray();
        List<SpotSheet> sheets = planner.plan(must, work,
                s -> watch.best(assembly.nesting(s, bounds.mm2(), bounds.cost(), List.of()), Math.min(1, work.share())));
        LowerBounds better = bounds.along(planner.bars(), stock, parts, must);
        if (watch.cancelled()) {
            findings.add(Finding.of(NestingReason.CANCELLED, "layout"));
        } else if (planner.stopped()) {
            findings.add(Finding.of(NestingReason.WORK_LIMIT, "layout", job.search().workLimit()));
        }
        Work more = work.own(job.search().workLimit() / 2);
        sheets = new MayPieces(planner, stock, parts, costs, more).added(must, sheets);
        sheets = new RoomFiller(stock, parts, costs, EnumSet.of(Want.FILLER), OrderPlanner.made(sheets, parts.size()), more)
                .filled(sheets);
        optional(parts, sheets);
        return assembly.nesting(sheets, better.mm2(), better.cost(), findings);
    }

    /** Findings about pieces of each want. */
    private void optional(List<BoxPart> parts, List<SpotSheet> sheets) {
        int[] made = OrderPlanner.made(sheets, parts.size());
        int[] missing = new int[made.length];
        for (int p = 0; p < made.length; p++) {
            NestPart part = parts.get(p).part();
            if (part.want() == Want.MUST) {
                missing[p] = part.quantity() - made[p];
            } else {
                findings.add(Finding.of(NestingReason.OPTIONAL_MADE, "part " + part.id(), part.id(), made[p], part.quantity()));
            }
        }
        findings.addAll(new StockFindings(stock, parts, job).shortages(missing));
    }
}
