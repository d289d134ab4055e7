// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
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
     * end with the least x. Pieces that find no room are left out: the caller compares the counts.
     */
    public static Layout around(NestingJob job, Layout layout, Set<Integer> locked, Watch watch) {
        JobCheck.check(Objects.requireNonNull(job, "job"));
        return new Around(job, layout, locked, new Work(Math.max(1, job.search().workLimit()), watch::cancelled)).layout();
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
        return parts.isEmpty() ? new Nesting(List.of(), 0, 0, findings) : result(parts, sheets(parts));
    }

    private List<SpotSheet> sheets(List<BoxPart> parts) {
        int[] wanted = parts.stream().mapToInt(p -> p.part().quantity()).toArray();
        long limit = job.search().workLimit();
        Work forBoxes = job.search().trueShapes() ? work.own(limit / 2) : work;
        Proposal proposal = parts.size() == 1 ? new SinglePlanner(stock, parts, forBoxes).plan(0, wanted[0])
                : new MixedPlanner(stock, parts, wanted, forBoxes).plan(job.search().seed());
        if (parts.size() > 1 && forBoxes.spent(0.9)) {
            findings.add(Finding.of(NestingReason.WORK_LIMIT, "layout", limit));
        }
        List<SpotSheet> boxes = SpotSheet.of(proposal, parts, stock);
        watch.best(new Assembly(job, stock, parts).nesting(boxes, 0, 0, List.of()), Math.min(1, work.share()));
        return job.search().trueShapes() && !rectangles(parts) ? byShape(parts, wanted, boxes) : boxes;
    }

    /** By true shapes where that is cheaper, or makes more of the pieces. */
    private List<SpotSheet> byShape(List<BoxPart> parts, int[] wanted, List<SpotSheet> boxes) {
        ShapePlanner planner = new ShapePlanner(stock, parts, work.own(job.search().workLimit() / 2), job.search().seed());
        List<SpotSheet> shapes = parts.size() == 1 ? planner.single(wanted[0]) : planner.mixed(wanted);
        int byBoxes = pieces(boxes);
        int byShapes = pieces(shapes);
        return byShapes > byBoxes || byShapes == byBoxes && price(shapes) < price(boxes) - 1e-9 ? shapes : boxes;
    }

    private static boolean rectangles(List<BoxPart> parts) {
        return parts.stream().allMatch(p -> p.part().shape().outer().areaMm2()
                > 0.98 * p.part().shape().bounds().width() * p.part().shape().bounds().height());
    }

    private static int pieces(List<SpotSheet> sheets) {
        return sheets.stream().mapToInt(s -> s.runs() * s.spots().size()).sum();
    }

    private double price(List<SpotSheet> sheets) {
        return sheets.stream().mapToDouble(s -> s.runs() * stock.offer(s.offer()).price()).sum();
    }

    private Nesting result(List<BoxPart> parts, List<SpotSheet> sheets) {
        int[] missing = parts.stream().mapToInt(p -> p.part().quantity()).toArray();
        sheets.forEach(s -> s.spots().forEach(spot -> missing[spot.part()] -= s.runs()));
        double grown = parts.stream().mapToDouble(p -> p.part().quantity() * MaterialBound.grownPart(p)).sum();
        findings.addAll(new StockFindings(stock, parts, job).shortages(missing));
        double bound = new MaterialBound(stock, parts).sheetAreaMm2(grown);
        return new Assembly(job, stock, parts).nesting(sheets, bound, 0, findings);
    }
}
