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
        return parts.isEmpty() ? new Nesting(List.of(), 0, 0, findings) : result(parts, sheets(parts));
    }

    private List<SpotSheet> sheets(List<BoxPart> parts) {
        int[] wanted = parts.stream().mapToInt(p -> p.part().quantity()).toArray();
        Work forBoxes = job.trueShapes() ? new Work(Math.max(1, job.workLimit() / 2)) : work;
        Proposal proposal = parts.size() == 1 ? new SinglePlanner(stock, parts, forBoxes).plan(0, wanted[0])
                : new MixedPlanner(stock, parts, wanted, forBoxes).plan(job.seed());
        if (parts.size() > 1 && forBoxes.spent(0.9)) {
            findings.add(Finding.of(NestingReason.WORK_LIMIT, "layout", job.workLimit()));
        }
        List<SpotSheet> boxes = SpotSheet.of(proposal, parts, stock);
        return job.trueShapes() && !rectangles(parts) ? byShape(parts, wanted, boxes) : boxes;
    }

    /** By true shapes where that is cheaper, or makes more of the pieces. */
    private List<SpotSheet> byShape(List<BoxPart> parts, int[] wanted, List<SpotSheet> boxes) {
        ShapePlanner planner = new ShapePlanner(stock, parts, new Work(Math.max(1, job.workLimit() / 2)), job.seed());
        List<SpotSheet> shapes = parts.size() == 1 ? planner.single(wanted[0]) : planner.mixed(boxes);
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
        List<Layout> layouts = layouts(parts, sheets);
        double partArea = 0;
        double sheetArea = 0;
        double grown = 0;
        int[] missing = parts.stream().mapToInt(p -> p.part().quantity()).toArray();
        for (SpotSheet s : sheets) {
            partArea += s.runs() * s.partAreaMm2(parts);
            sheetArea += s.runs() * stock.areaMm2(s.offer());
            s.spots().forEach(spot -> missing[spot.part()] -= s.runs());
        }
        for (BoxPart p : parts) {
            grown += p.part().quantity() * MaterialBound.grownPart(p);
        }
        findings.addAll(new StockFindings(stock, parts, job).shortages(missing));
        remnants(sheets, layouts, parts);
        double bound = new MaterialBound(stock, parts).sheetAreaMm2(grown);
        return new Nesting(layouts, sheetArea == 0 ? 0 : partArea / sheetArea, bound, findings);
    }

    /** Remnants first; layouts that are the same are one with the runs added. */
    private List<Layout> layouts(List<BoxPart> parts, List<SpotSheet> sheets) {
        Map<List<Object>, Layout> merged = new LinkedHashMap<>();
        for (boolean remnant : new boolean[] {true, false}) {
            for (SpotSheet s : sheets) {
                if (stock.offer(s.offer()).remnant() == remnant) {
                    Layout layout = layout(s, parts);
                    merged.merge(List.of(layout.sheet(), layout.placements()), layout,
                            (a, b) -> new Layout(a.sheet(), a.placements(), a.runs() + b.runs()));
                }
            }
        }
        return List.copyOf(merged.values());
    }

    private Layout layout(SpotSheet s, List<BoxPart> parts) {
        return new Layout(stock.offer(s.offer()), s.spots().stream()
                .map(p -> new Placement(parts.get(p.part()).part().id(), p.pose())).toList(), s.runs());
    }

    private void remnants(List<SpotSheet> sheets, List<Layout> layouts, List<BoxPart> parts) {
        for (int i = 0; i < layouts.size(); i++) {
            Layout layout = layouts.get(i);
            SpotSheet sheet = sheets.stream().filter(s -> layout(s, parts).placements().equals(layout.placements())
                    && stock.offer(s.offer()) == layout.sheet()).findFirst().orElseThrow();
            double rest = layout.sheet().lengthMm() - sheet.toX() - job.edgeMm();
            if (rest >= KEEP_REMNANT_MM && layout.sheet().widthMm() >= KEEP_REMNANT_MM) {
                findings.add(Finding.of(NestingReason.REMNANT_LEFT, "layout " + (i + 1), i + 1, rest,
                        layout.sheet().widthMm(), layout.sheet().id()));
            }
        }
    }
}
