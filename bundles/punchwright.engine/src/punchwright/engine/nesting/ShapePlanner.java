// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.Laid;
import punchwright.engine.nesting.shapes.Lattice;
import punchwright.engine.nesting.shapes.SheetGrow;
import punchwright.engine.nesting.shapes.TurnRule;

/** Layouts by true shapes: interlocked patterns of one part, and parts of the emptiest sheet moved into gaps of the others. */
final class ShapePlanner {

    private static final int MOST_SPOTS = 250;
    private static final int EFFORT = 25;

    private final Stock stock;
    private final List<BoxPart> parts;
    private final ShapeBook book;
    private final SheetFrame frame;
    private final Work work;
    private final long seed;

    ShapePlanner(Stock stock, List<BoxPart> parts, Work work, long seed) {
        this.stock = stock;
        this.parts = parts;
        this.work = work;
        this.seed = seed;
        this.book = new ShapeBook(parts);
        this.frame = new SheetFrame(stock, parts, book);
    }

    /** One part: the cheapest mix of sheets with the best pattern on each offer. */
    List<SpotSheet> single(int quantity) {
        Lattice lattice = new Lattice(book.piece(0), 1e-3, work);
        List<List<BoxPlacement>> blocks = new SinglePlanner(stock, parts, work).patterns(0);
        ShapeFiller filler = new ShapeFiller(stock, frame, book, work);
        List<List<Spot>> patterns = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            int offer = i;
            List<Spot> plain = blocks.get(i).stream().map(b -> Spot.of(b, parts.get(0), stock.region(offer))).toList();
            List<Spot> better = stock.offer(i).bar() ? plain : better(plain, lattice, filler, i, quantity);
            boolean grow = !stock.offer(i).bar() && (better.size() > plain.size() || plain.size() <= MOST_SPOTS);
            patterns.add(grow ? grown(better, i, quantity) : better);
        }
        int[] sheets = new StockCover(patterns.stream().mapToInt(List::size).toArray(), stock).sheets(quantity);
        return use(patterns, sheets, quantity);
    }

    /** Boxes, the lattice with more pieces in the room that it leaves, or pieces placed one by one: what holds the most. */
    private List<Spot> better(List<Spot> plain, Lattice lattice, ShapeFiller filler, int offer, int quantity) {
        List<Laid> laid = lattice.fill(frame.length(offer), frame.width(offer), quantity).stream()
                .map(p -> new Laid(0, p.turn(), p.x(), p.y())).toList();
        List<Laid> best = List.of();
        for (List<Laid> kept : List.of(laid, List.<Laid>of())) {
            int[] more = {quantity - kept.size()};
            List<Laid> filled = filler.fill(offer, kept, more, new int[] {0}, TurnRule.RIGHT_END).laid();
            best = filled.size() > best.size() ? filled : best;
        }
        return best.size() > Math.min(quantity, plain.size()) ? best.stream().map(l -> frame.spot(l, offer)).toList() : plain;
    }

    private List<SpotSheet> use(List<List<Spot>> patterns, int[] sheets, int quantity) {
        Integer[] order = new Integer[sheets.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.<Integer, Boolean>comparing(i -> !stock.offer(i).remnant())
                .thenComparing(i -> patterns.get(i).size()));
        List<SpotSheet> out = new ArrayList<>();
        int left = quantity;
        for (int offer : order) {
            List<Spot> pattern = patterns.get(offer);
            int full = pattern.isEmpty() ? 0 : Math.min(sheets[offer], left / pattern.size());
            if (full > 0) {
                out.add(new SpotSheet(offer, pattern, full));
                left -= full * pattern.size();
            }
            if (full < sheets[offer] && left > 0 && !pattern.isEmpty()) {
                out.add(new SpotSheet(offer, pattern.subList(0, left), 1));
                left = 0;
            }
        }
        return out;
    }

    /** One piece more at a time, where the area allows and fewer than needed lie there. */
    private List<Spot> grown(List<Spot> pattern, int offer, int quantity) {
        List<Spot> best = pattern;
        while (!best.isEmpty() && best.size() < Math.min(quantity, MOST_SPOTS) && !work.spent(0.8)) {
            List<Spot> more = add(best, 0, offer);
            if (more == null) {
                break;
            }
            best = more;
        }
        List<Spot> sorted = new ArrayList<>(best);
        sorted.sort(Comparator.comparingDouble(Spot::toX).thenComparingDouble(s -> s.pose().y()));
        return sorted;
    }

    /** Several parts: filled by outlines; then sheets are emptied into gaps of the others, as long as all their parts fit. */
    List<SpotSheet> mixed(int[] wanted) {
        Work forFilling = work.own(work.left() * 3 / 4);
        ShapePlan plan = new MixedShapes(stock, parts, wanted, book, forFilling, seed).plan();
        work.add(forFilling.done());
        List<SpotSheet> filled = plan.sheets().stream().map(f -> new SpotSheet(f.offer(),
                f.laid().stream().map(l -> frame.spot(l, f.offer())).toList(), f.runs())).toList();
        return dissolved(filled);
    }

    private List<SpotSheet> dissolved(List<SpotSheet> sheets) {
        List<SpotSheet> open = new ArrayList<>();
        for (SpotSheet s : sheets) {
            for (int run = 0; run < s.runs(); run++) {
                open.add(new SpotSheet(s.offer(), s.spots(), 1));
            }
        }
        boolean going = open.size() > 1 && open.stream().allMatch(s -> s.spots().size() <= MOST_SPOTS);
        boolean saved = false;
        while (going && open.size() > 1 && !work.spent()) {
            List<SpotSheet> fewer = withoutEmptiest(open);
            going = fewer != null;
            saved |= going;
            open = going ? fewer : open;
        }
        return saved ? open : sheets;
    }

    private List<SpotSheet> withoutEmptiest(List<SpotSheet> open) {
        List<SpotSheet> rest = new ArrayList<>(open);
        SpotSheet emptiest = rest.stream().min(Comparator.comparingDouble(s -> s.partAreaMm2(parts)
                / stock.offer(s.offer()).price())).orElseThrow();
        rest.remove(emptiest);
        double room = rest.stream().mapToDouble(s -> frame.room(s.offer()) - grownArea(s)).sum();
        if (grownArea(emptiest) > 0.9 * room) {
            return null;
        }
        List<Spot> pool = new ArrayList<>(emptiest.spots());
        pool.sort(Comparator.comparingDouble((Spot s) -> -book.piece(s.part()).area()).thenComparingInt(Spot::part));
        for (Spot spot : pool) {
            if (!placed(spot.part(), rest)) {
                return null;
            }
        }
        return rest;
    }

    private double grownArea(SpotSheet s) {
        return s.spots().stream().mapToDouble(p -> book.piece(p.part()).area()).sum();
    }

    /** Puts a part on the sheet with the most free area that takes it. */
    private boolean placed(int part, List<SpotSheet> sheets) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> grownArea(sheets.get(i)) - frame.room(sheets.get(i).offer())));
        for (int i : order) {
            SpotSheet s = sheets.get(i);
            List<Spot> more = work.spent() ? null : add(s.spots(), part, s.offer());
            if (more != null) {
                sheets.set(i, new SpotSheet(s.offer(), more, 1));
                return true;
            }
        }
        return false;
    }

    private List<Spot> add(List<Spot> present, int part, int offer) {
        List<SheetGrow.At> at = new ArrayList<>();
        for (Spot s : present) {
            Laid l = frame.laid(s, offer);
            at.add(new SheetGrow.At(book.piece(s.part()), l.turn(), l.x(), l.y()));
        }
        List<SheetGrow.At> more = SheetGrow.add(at, book.piece(part), frame.length(offer), frame.width(offer), EFFORT, work,
                seed);
        if (more == null) {
            return null;
        }
        List<Spot> out = new ArrayList<>();
        for (int i = 0; i < more.size(); i++) {
            SheetGrow.At a = more.get(i);
            int kind = i < present.size() ? present.get(i).part() : part;
            out.add(frame.spot(new Laid(kind, a.turn(), a.x(), a.y()), offer));
        }
        return out;
    }
}
