// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;

import punchwright.engine.nesting.boxes.Work;

/** Sheets for given quantities of the parts: bars exactly, one part by patterns, several by search, true shapes where asked. */
final class OrderPlanner {

    /** Steps along bars for one trial placement: they are as much shorter. */
    private static final long BAR_SHARE = 20;

    private final NestingJob job;
    private final Stock stock;
    private final List<BoxPart> parts;
    private BarPlanner.Answer bars;
    private boolean stopped;

    OrderPlanner(NestingJob job, Stock stock, List<BoxPart> parts) {
        this.job = job;
        this.stock = stock;
        this.parts = parts;
    }

    /** The last plan, where it was one along bars, with its bounds; else null. */
    BarPlanner.Answer bars() {
        return bars;
    }

    /** Whether the last plan stopped at its work limit. */
    boolean stopped() {
        return stopped;
    }

    /** So many pieces of each part, 0 allowed; as many as the stock allows. */
    List<SpotSheet> plan(int[] wanted, Work work, Consumer<List<SpotSheet>> better) {
        bars = null;
        stopped = false;
        int[] numbers = IntStream.range(0, wanted.length).filter(p -> wanted[p] > 0).toArray();
        if (numbers.length == 0) {
            return List.of();
        }
        List<BoxPart> some = Arrays.stream(numbers).mapToObj(parts::get).toList();
        int[] quantities = Arrays.stream(numbers).map(p -> wanted[p]).toArray();
        return numbered(plan(some, quantities, work, s -> better.accept(numbered(s, numbers))), numbers);
    }

    private static List<SpotSheet> numbered(List<SpotSheet> sheets, int[] numbers) {
        return sheets.stream().map(s -> new SpotSheet(s.offer(), s.spots().stream()
                .map(spot -> new Spot(numbers[spot.part()], spot.pose(), spot.toX())).toList(), s.runs())).toList();
    }

    private List<SpotSheet> plan(List<BoxPart> some, int[] wanted, Work work, Consumer<List<SpotSheet>> better) {
        boolean shapes = job.search().trueShapes() && !rectangles(some) && some.stream().noneMatch(stock::sits)
                && IntStream.range(0, stock.size()).noneMatch(i -> stock.region(i).row());
        Work forBoxes = shapes ? work.own(work.left() / 2) : work;
        List<SpotSheet> boxes = byBoxes(some, wanted, forBoxes, better);
        better.accept(boxes);
        return shapes ? byShape(some, wanted, boxes, work.own(work.left() / 2)) : boxes;
    }

    private List<SpotSheet> byBoxes(List<BoxPart> some, int[] wanted, Work work, Consumer<List<SpotSheet>> better) {
        BarPlanner row = new BarPlanner(stock, some, work.own(BAR_SHARE * work.left()));
        bars = row.oneRow() ? row.plan(wanted) : null;
        if (bars != null) {
            return SpotSheet.of(bars.sheets(), some, stock);
        }
        if (some.size() == 1) {
            return SpotSheet.of(new SinglePlanner(stock, some, work).plan(0, wanted[0]).sheets(), some, stock);
        }
        Proposal proposal = new MixedPlanner(stock, some, wanted, work)
                .plan(job.search().seed(), p -> better.accept(SpotSheet.of(p.sheets(), some, stock)));
        stopped = work.spent(0.9);
        return SpotSheet.of(proposal.sheets(), some, stock);
    }

    /** By true shapes where that is cheaper, or makes more of the pieces. */
    private List<SpotSheet> byShape(List<BoxPart> some, int[] wanted, List<SpotSheet> boxes, Work work) {
        ShapePlanner planner = new ShapePlanner(stock, some, work, job.search().seed());
        List<SpotSheet> shapes = some.size() == 1 ? planner.single(wanted[0]) : planner.mixed(wanted);
        int byBoxes = pieces(boxes);
        int byShapes = pieces(shapes);
        SpotCosts costs = new SpotCosts(stock, some);
        return byShapes > byBoxes || byShapes == byBoxes && costs.of(shapes) - costs.shared(shapes)
                < costs.of(boxes) - costs.shared(boxes) - 1e-9 ? shapes : boxes;
    }

    private static boolean rectangles(List<BoxPart> parts) {
        return parts.stream().allMatch(p -> p.part().openings().isEmpty() && p.part().shape().outer().areaMm2()
                > 0.98 * p.part().shape().bounds().width() * p.part().shape().bounds().height());
    }

    static int pieces(List<SpotSheet> sheets) {
        return sheets.stream().mapToInt(s -> s.runs() * s.spots().size()).sum();
    }

    /** Pieces of each part that sheets make. */
    static int[] made(List<SpotSheet> sheets, int parts) {
        int[] made = new int[parts];
        sheets.forEach(s -> s.spots().forEach(spot -> made[spot.part()] += s.runs()));
        return made;
    }
}
