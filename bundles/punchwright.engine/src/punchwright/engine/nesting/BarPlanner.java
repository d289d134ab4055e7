// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.bars.BarKind;
import punchwright.engine.nesting.bars.BarPlan;
import punchwright.engine.nesting.bars.BarProblem;
import punchwright.engine.nesting.bars.BarSearch;
import punchwright.engine.nesting.bars.Pattern;
import punchwright.engine.nesting.boxes.Work;

/** Orders whose parts lie in one row on every sheet: bars and strips, and sheets on which no two parts fit side by side. */
final class BarPlanner {

    /**
     * Sheets with what any sheets for the same pieces take at least.
     *
     * @param boundCost of their cost less remnants and scrap; minus infinity where it does not hold
     * @param boundMm2  of their area
     */
    record Answer(List<FilledSheet> sheets, double boundCost, double boundMm2) {
    }

    /** Steps of the linear program for a bound. */
    private static final long BOUND_WORK = 2_000_000;

    private final Stock stock;
    private final List<BoxPart> parts;
    private final Work work;
    private final int web;
    private final double gapMm;

    BarPlanner(Stock stock, List<BoxPart> parts, Work work) {
        this.stock = stock;
        this.parts = parts;
        this.work = work;
        this.web = Ticks.of(parts.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0));
        this.gapMm = new FreeRests(stock.costs().job()).gapMm();
    }

    /** Whether no two parts fit side by side on any sheet. */
    boolean oneRow() {
        return parts.stream().noneMatch(stock::sits) && IntStream.range(0, stock.size()).allMatch(this::oneRow);
    }

    private boolean oneRow(int offer) {
        Region region = stock.region(offer);
        return region.row() || 2L * narrowest(region) + web > region.width();
    }

    private int narrowest(Region region) {
        return parts.stream().flatMap(p -> p.turns().stream()).filter(t -> t.length() <= region.length()
                && t.width() <= region.width()).mapToInt(Turn::width).min().orElse(region.width() + 1);
    }

    /** The cheapest sheets, or null where the stock is short or nothing was found. */
    Answer plan(int[] wanted) {
        List<BarKind> kinds = kinds(web);
        BarPlan plan = BarSearch.solve(new BarProblem(kinds, stock.onHand(), wanted), work);
        boolean hold = boundsHold();
        return plan == null ? null : new Answer(sheets(plan, kinds), hold ? bound(plan, wanted) : Double.NEGATIVE_INFINITY,
                hold ? areaBound(wanted) : 0);
    }

    /** On bars parts may not lie side by side by rule; on sheets other shapes than rectangles may interlock all the same. */
    private boolean boundsHold() {
        return IntStream.range(0, stock.size()).allMatch(i -> stock.region(i).row())
                || parts.stream().allMatch(BarPlanner::isRectangle);
    }

    private static boolean isRectangle(BoxPart part) {
        Bounds b = part.part().shape().bounds();
        return part.part().shape().outer().areaMm2() >= b.width() * b.height() * (1 - 1e-9);
    }

    private List<BarKind> kinds(int between) {
        List<BarKind> kinds = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            kinds.add(kind(i, between));
        }
        for (int i = 0; i < stock.size(); i++) {
            addKept(i, between, kinds);
        }
        return kinds;
    }

    /** The web that bounds may count on: the least, as parts of less web may lie closer than all do here. */
    private int leastWeb() {
        return Ticks.of(parts.stream().mapToDouble(p -> p.part().webMm()).min().orElse(0));
    }

    /** Least area of sheets for the quantities, by the linear program over all patterns; whole sheets where all are alike. */
    private double areaBound(int[] wanted) {
        List<BarKind> kinds = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            BarKind k = kind(i, leastWeb());
            kinds.add(new BarKind(k.capacity(), k.lengths(), stock.areaMm2(i), 0, i));
        }
        double bound = BarSearch.bound(new BarProblem(kinds, stock.onHand(), wanted), work.own(BOUND_WORK));
        double first = stock.areaMm2(0);
        boolean alike = IntStream.range(0, stock.size()).allMatch(i -> stock.areaMm2(i) == first);
        return alike ? Math.ceil(bound / first - 1e-6) * first : bound;
    }

    private double bound(BarPlan plan, int[] wanted) {
        double partMm2 = 0;
        for (int p = 0; p < wanted.length; p++) {
            partMm2 += wanted[p] * parts.get(p).areaMm2();
        }
        double proven = leastWeb() == web ? plan.bound()
                : BarSearch.bound(new BarProblem(kinds(leastWeb()), stock.onHand(), wanted), work.own(BOUND_WORK));
        boolean onlyEnds = IntStream.range(0, stock.size()).allMatch(this::onlyEndsKept);
        return onlyEnds ? proven + partMm2 * stock.costs().scrapPerMm2() : Double.NEGATIVE_INFINITY;
    }

    /** Whether no strip beside the parts is ever kept, so that the cost of a sheet depends on the length used alone. */
    private boolean onlyEndsKept(int offer) {
        NestingCosts costs = stock.costs().job().costs();
        double beside = stock.offer(offer).widthMm() - Ticks.mm(narrowest(stock.region(offer))) - gapMm;
        return stock.offer(offer).bar() || costs.remnantShare() == 0
                || beside < Math.min(costs.keepLengthMm(), costs.keepWidthMm());
    }

    private BarKind kind(int offer, int between) {
        Region region = stock.region(offer);
        int[] lengths = new int[parts.size()];
        for (int p = 0; p < lengths.length; p++) {
            int turn = shortest(p, region);
            lengths[p] = turn < 0 ? 0 : parts.get(p).turns().get(turn).length() + between;
        }
        SheetOffer o = stock.offer(offer);
        double cost = o.price() + stock.costs().job().costs().handlingPerSheet() - o.areaMm2() * stock.costs().scrapPerMm2();
        return new BarKind(region.length() + between, lengths, cost, 0, offer);
    }

    private int shortest(int part, Region region) {
        List<Turn> turns = parts.get(part).turns();
        int best = -1;
        for (int t = 0; t < turns.size(); t++) {
            boolean fits = turns.get(t).width() <= region.width() && turns.get(t).length() <= region.length();
            best = fits && (best < 0 || turns.get(t).length() < turns.get(best).length()) ? t : best;
        }
        return best;
    }

    /** The same bar used so little that its rest is kept. */
    private void addKept(int offer, int between, List<BarKind> kinds) {
        SheetOffer o = stock.offer(offer);
        BarKind plain = kinds.get(offer);
        double gain = (stock.costs().job().costs().remnantValue(o, 1) - stock.costs().scrapPerMm2()) * o.widthMm();
        double rest = shortestKept(o);
        double free = o.lengthMm() - stock.region(offer).xMm() + Ticks.mm(between) - gapMm;
        int capacity = Math.min(plain.capacity(), Ticks.of(free - rest - 1e-4));
        if (gain > 0 && capacity > 0) {
            kinds.add(new BarKind(capacity, plain.lengths(), plain.cost() - gain * free, gain / Ticks.PER_MM, offer));
        }
    }

    private double shortestKept(SheetOffer o) {
        NestingCosts costs = stock.costs().job().costs();
        double less = Math.min(costs.keepLengthMm(), costs.keepWidthMm());
        double more = Math.max(costs.keepLengthMm(), costs.keepWidthMm());
        if (o.bar() || o.widthMm() < more) {
            return o.bar() || o.widthMm() >= less ? more : Double.POSITIVE_INFINITY;
        }
        return less;
    }

    private List<FilledSheet> sheets(BarPlan plan, List<BarKind> kinds) {
        List<FilledSheet> sheets = new ArrayList<>();
        for (Map.Entry<Pattern, Integer> e : plan.runs().entrySet()) {
            int offer = kinds.get(e.getKey().kind()).stock();
            sheets.add(new FilledSheet(offer, boxes(e.getKey(), offer), e.getValue()));
        }
        return sheets;
    }

    /** The longest first. */
    private List<BoxPlacement> boxes(Pattern pattern, int offer) {
        Region region = stock.region(offer);
        List<Integer> order = IntStream.range(0, parts.size()).filter(p -> pattern.counts()[p] > 0).boxed()
                .sorted(Comparator.comparingInt(p -> -parts.get(p).turns().get(shortest(p, region)).length())).toList();
        List<BoxPlacement> boxes = new ArrayList<>();
        int x = 0;
        for (int p : order) {
            int turn = shortest(p, region);
            for (int n = 0; n < pattern.counts()[p]; n++) {
                boxes.add(new BoxPlacement(p, turn, x, 0));
                x += parts.get(p).turns().get(turn).length() + web;
            }
        }
        return boxes;
    }
}
