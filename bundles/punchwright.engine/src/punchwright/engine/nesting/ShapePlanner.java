// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.geometry.Pose;
import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.Lattice;
import punchwright.engine.nesting.shapes.SheetGrow;
import punchwright.engine.nesting.shapes.StripSearch;

/** Layouts by true shapes: interlocked patterns of one part, and parts of the emptiest sheet moved into gaps of the others. */
final class ShapePlanner {

    private static final int MOST_SPOTS = 250;
    private static final int EFFORT = 25;

    private final Stock stock;
    private final List<BoxPart> parts;
    private final ShapeBook book;
    private final Work work;
    private final long seed;

    ShapePlanner(Stock stock, List<BoxPart> parts, Work work, long seed) {
        this.stock = stock;
        this.parts = parts;
        this.work = work;
        this.seed = seed;
        this.book = new ShapeBook(parts);
    }

    /** One part: the cheapest mix of sheets with the better pattern, boxes or interlocked, on each offer. */
    List<SpotSheet> single(int quantity) {
        Lattice lattice = new Lattice(book.piece(0), 1e-3, work);
        SinglePlanner boxes = new SinglePlanner(stock, parts, work);
        List<List<BoxPlacement>> blocks = boxes.patterns(0);
        List<List<Spot>> patterns = new ArrayList<>();
        for (int i = 0; i < stock.size(); i++) {
            List<Spot> shapes = spots(lattice.fill(length(i), width(i), Integer.MAX_VALUE), 0, i);
            int offer = i;
            List<Spot> plain = blocks.get(i).stream().map(b -> Spot.of(b, parts.get(0), stock.region(offer))).toList();
            List<Spot> better = shapes.size() > plain.size() ? shapes : plain;
            patterns.add(better.size() > plain.size() || plain.size() <= MOST_SPOTS ? grown(better, i, quantity) : better);
        }
        int[] sheets = new StockCover(patterns.stream().mapToInt(List::size).toArray(), stock).sheets(quantity);
        return use(patterns, sheets, quantity);
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

    /** Several parts: empties sheets, the emptiest first, as long as all its parts find room on the others. */
    List<SpotSheet> mixed(List<SpotSheet> sheets) {
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
        double room = rest.stream().mapToDouble(s -> room(s.offer()) - grownArea(s)).sum();
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

    private double room(int offer) {
        return length(offer) * width(offer);
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
        order.sort(Comparator.comparingDouble(i -> grownArea(sheets.get(i)) - room(sheets.get(i).offer())));
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
        double dx = stock.region(offer).xMm() - book.webMm() / 2;
        double dy = stock.region(offer).yMm() - book.webMm() / 2;
        for (Spot s : present) {
            at.add(new SheetGrow.At(book.piece(s.part()), turn(s), s.pose().x() - dx, s.pose().y() - dy));
        }
        List<SheetGrow.At> more = SheetGrow.add(at, book.piece(part), length(offer), width(offer), EFFORT, work, seed);
        if (more == null) {
            return null;
        }
        List<Spot> out = new ArrayList<>();
        for (int i = 0; i < more.size(); i++) {
            SheetGrow.At a = more.get(i);
            out.add(spot(i < present.size() ? present.get(i).part() : part, a.turn(), a.x(), a.y(), offer));
        }
        return out;
    }

    private int turn(Spot s) {
        List<Double> angles = parts.get(s.part()).part().anglesDeg();
        for (int t = 0; t < angles.size(); t++) {
            if (angles.get(t) == s.pose().angleDeg()) {
                return t;
            }
        }
        throw new IllegalStateException("angle " + s.pose().angleDeg() + " is not one of " + angles);
    }

    private double length(int offer) {
        return Ticks.mm(stock.region(offer).length()) + book.webMm();
    }

    private double width(int offer) {
        return Ticks.mm(stock.region(offer).width()) + book.webMm();
    }

    private List<Spot> spots(List<StripSearch.Placed> placed, int part, int offer) {
        return placed.stream().map(p -> spot(part, p.turn(), p.x(), p.y(), offer)).toList();
    }

    private Spot spot(int part, int turn, double x, double y, int offer) {
        Region r = stock.region(offer);
        double half = book.webMm() / 2;
        double sx = x + r.xMm() - half;
        Pose pose = Pose.at(sx, y + r.yMm() - half, book.piece(part).angleDeg(turn));
        return new Spot(part, pose, sx + book.piece(part).maxX(turn) - half);
    }
}
