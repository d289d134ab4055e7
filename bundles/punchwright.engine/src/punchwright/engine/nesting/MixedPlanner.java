// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.Work;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/**
 * Several parts: sheet after sheet by maximal free rectangles. Every order of the parts, fit rule and order of the offers
 * gives one proposal; after the fixed ones, orders are changed at random from the best one until the work limit.
 */
final class MixedPlanner {

    /** A way to fill: order of the parts, fit rule, order of the offers, and whether full single-part sheets come first. */
    private record Recipe(int[] order, FitRule rule, int[] offers, boolean single) {
    }

    private record Judged(Recipe recipe, Proposal proposal) {
    }

    private final Stock stock;
    private final List<BoxPart> parts;
    private final int[] wanted;
    private final Work work;
    private final BoxFiller filler;
    private final SinglePlanner single;
    private final List<List<List<BoxPlacement>>> patterns = new ArrayList<>();

    MixedPlanner(Stock stock, List<BoxPart> parts, int[] wanted, Work work) {
        this.stock = stock;
        this.parts = parts;
        this.wanted = wanted;
        this.work = work;
        this.filler = new BoxFiller(parts, work);
        this.single = new SinglePlanner(stock, parts, work);
    }

    /** The best found; {@code told} hears of each better one. */
    Proposal plan(long seed, Consumer<Proposal> told) {
        Judged best = null;
        for (Recipe recipe : recipes()) {
            if (best == null || !work.spent(0.4)) {
                best = better(best, judge(recipe), told);
            }
        }
        SplittableRandom random = new SplittableRandom(seed);
        while (!work.spent(0.5)) {
            best = better(best, judge(changed(best.recipe, random)), told);
        }
        Proposal fewer = new SheetSaver(stock, parts, work).fewer(best.proposal, seed);
        return shrunk(Proposal.BEST.compare(fewer, best.proposal) < 0 ? fewer : best.proposal);
    }

    private static Judged better(Judged a, Judged b, Consumer<Proposal> told) {
        boolean better = a == null || Proposal.BEST.compare(b.proposal, a.proposal) < 0;
        if (better) {
            told.accept(b.proposal);
        }
        return better ? b : a;
    }

    private List<Recipe> recipes() {
        List<Recipe> recipes = new ArrayList<>();
        for (int[] offers : offerOrders()) {
            for (boolean singleFirst : new boolean[] {false, true}) {
                for (int[] order : partOrders()) {
                    for (FitRule rule : FitRule.values()) {
                        recipes.add(new Recipe(order, rule, offers, singleFirst));
                    }
                }
            }
        }
        return recipes;
    }

    private List<int[]> partOrders() {
        return List.of(orderBy(BoxPart::boxArea), orderBy(BoxPart::longSide), orderBy(BoxPart::shortSide),
                orderBy(p -> p.turns().get(0).width()), orderBy(p -> p.turns().get(0).length()));
    }

    /** Largest first. */
    private int[] orderBy(ToLongFunction<BoxPart> size) {
        return IntStream.range(0, parts.size()).boxed()
                .sorted(Comparator.comparingLong((Integer p) -> -size.applyAsLong(parts.get(p)))).mapToInt(Integer::intValue)
                .toArray();
    }

    /** Each offer once in front, the others by price for the room; remnants before all, and once only by their price. */
    private List<int[]> offerOrders() {
        List<Integer> byPrice = new ArrayList<>(IntStream.range(0, stock.size()).boxed().toList());
        byPrice.sort(Comparator.comparingDouble(i -> (stock.offer(i).price() + stock.costs().job().costs().handlingPerSheet())
                / stock.areaMm2(i)));
        List<int[]> orders = new ArrayList<>();
        for (int first : byPrice) {
            List<Integer> order = new ArrayList<>(byPrice);
            order.remove((Integer) first);
            order.add(0, first);
            List<Integer> remnantsFirst = new ArrayList<>(order);
            remnantsFirst.sort(Comparator.comparing(i -> !stock.offer(i).remnant()));
            addNew(orders, remnantsFirst);
            addNew(orders, order);
        }
        return orders;
    }

    private static void addNew(List<int[]> orders, List<Integer> order) {
        int[] a = order.stream().mapToInt(Integer::intValue).toArray();
        if (orders.stream().noneMatch(o -> Arrays.equals(o, a))) {
            orders.add(a);
        }
    }

    private Recipe changed(Recipe r, SplittableRandom random) {
        int[] order = r.order.clone();
        for (int swaps = 1 + random.nextInt(3); swaps > 0; swaps--) {
            int a = random.nextInt(order.length);
            int b = random.nextInt(order.length);
            int keep = order[a];
            order[a] = order[b];
            order[b] = keep;
        }
        FitRule rule = random.nextInt(4) == 0 ? FitRule.values()[random.nextInt(FitRule.values().length)] : r.rule;
        return new Recipe(order, rule, r.offers, r.single);
    }

    private Judged judge(Recipe recipe) {
        work.add(1);
        int[] left = wanted.clone();
        int[] onHand = stock.onHand();
        List<FilledSheet> sheets = new ArrayList<>();
        if (recipe.single) {
            singlePartSheets(recipe, left, onHand, sheets);
        }
        for (int offer : recipe.offers) {
            boolean going = true;
            while (going && onHand[offer] > 0) {
                going = use(offer, filler.fill(stock, offer, left, recipe.order, recipe.rule), left, onHand, sheets);
            }
        }
        return new Judged(recipe, Proposal.of(sheets, left, stock, parts));
    }

    private void singlePartSheets(Recipe recipe, int[] left, int[] onHand, List<FilledSheet> sheets) {
        if (patterns.isEmpty()) {
            IntStream.range(0, parts.size()).forEach(p -> patterns.add(single.patterns(p)));
        }
        int offer = recipe.offers[0];
        for (int part : recipe.order) {
            List<BoxPlacement> pattern = patterns.get(part).get(offer);
            if (!pattern.isEmpty() && left[part] >= pattern.size()) {
                use(offer, pattern, left, onHand, sheets);
            }
        }
    }

    /** Runs a filled sheet as often as quantities and stock allow. */
    private boolean use(int offer, List<BoxPlacement> boxes, int[] left, int[] onHand, List<FilledSheet> sheets) {
        if (boxes.isEmpty()) {
            return false;
        }
        int[] counts = new FilledSheet(offer, boxes, 1).counts(parts.size());
        int runs = onHand[offer];
        for (int p = 0; p < counts.length; p++) {
            runs = counts[p] > 0 ? Math.min(runs, left[p] / counts[p]) : runs;
        }
        if (runs == 0) {
            return false;
        }
        for (int p = 0; p < counts.length; p++) {
            left[p] -= runs * counts[p];
        }
        onHand[offer] -= runs;
        sheets.add(new FilledSheet(offer, boxes, runs));
        return true;
    }

    /** Moves whole layouts to sheets that cost less with the same parts, and packs them so that the rest is worth most. */
    private Proposal shrunk(Proposal best) {
        List<FilledSheet> sheets = new ArrayList<>(best.sheets());
        int[] onHand = stock.onHand();
        sheets.forEach(s -> onHand[s.offer()] -= s.runs());
        for (int i = sheets.size() - 1; i >= 0; i--) {
            FilledSheet cheaper = cheaper(sheets.get(i), onHand);
            onHand[sheets.get(i).offer()] += sheets.get(i).runs();
            onHand[cheaper.offer()] -= cheaper.runs();
            sheets.set(i, cheaper);
        }
        int[] left = wanted.clone();
        for (FilledSheet s : sheets) {
            int[] counts = s.counts(parts.size());
            for (int p = 0; p < left.length; p++) {
                left[p] -= s.runs() * counts[p];
            }
        }
        return Proposal.of(sheets, left, stock, parts);
    }

    private FilledSheet cheaper(FilledSheet sheet, int[] onHand) {
        int[] counts = sheet.counts(parts.size());
        FilledSheet best = sheet;
        double least = Proposal.cost(sheet, stock, parts);
        for (int offer = 0; offer < stock.size(); offer++) {
            boolean own = offer == sheet.offer() && stock.costs().dependOnRest();
            boolean other = offer != sheet.offer() && onHand[offer] >= sheet.runs()
                    && (stock.costs().dependOnRest() || stock.offer(offer).price() < stock.offer(best.offer()).price());
            FilledSheet packed = own || other ? fitAll(offer, counts, sheet) : null;
            if (packed != null && Proposal.cost(packed, stock, parts) < least - 1e-9) {
                best = packed;
                least = Proposal.cost(packed, stock, parts);
            }
        }
        return best;
    }

    /** All parts of a sheet on one of another offer, the cheapest way found; null where they do not fit. */
    private FilledSheet fitAll(int offer, int[] counts, FilledSheet sheet) {
        FilledSheet best = null;
        for (int[] order : partOrders()) {
            for (FitRule rule : FitRule.values()) {
                List<BoxPlacement> filled = filler.fill(stock, offer, counts, order, rule);
                if (filled.size() == sheet.boxes().size()) {
                    FilledSheet packed = new FilledSheet(offer, filled, sheet.runs());
                    if (!stock.costs().dependOnRest()) {
                        return packed;
                    }
                    best = best == null || Proposal.cost(packed, stock, parts) < Proposal.cost(best, stock, parts) - 1e-9
                            ? packed : best;
                }
            }
        }
        return best;
    }
}
