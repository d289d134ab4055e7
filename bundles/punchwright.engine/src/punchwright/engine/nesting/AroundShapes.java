// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;

import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.Laid;
import punchwright.engine.nesting.shapes.SheetFill;
import punchwright.engine.nesting.shapes.TurnRule;

/** Parts of one sheet placed anew around those that stay, by their true outlines, under many orders of the parts. */
final class AroundShapes {

    private static final int MOST_ROUNDS = 200;

    private final NestingJob job;
    private final Layout layout;
    private final Set<Integer> locked;
    private final Work work;
    private final Stock stock;
    private final List<BoxPart> parts;
    private final ShapeBook book;
    private final SheetFrame frame;

    AroundShapes(NestingJob job, Layout layout, Set<Integer> locked, Work work) {
        this.job = job;
        this.layout = layout;
        this.locked = locked;
        this.work = work;
        this.stock = new Stock(job.withOffers(List.of(layout.sheet())), new ArrayList<>());
        this.parts = job.parts().stream().map(BoxPart::of).toList();
        this.book = new ShapeBook(parts);
        this.frame = new SheetFrame(stock, parts, book);
    }

    /** The layout with what stays in front; null where a piece that stays lies at an angle or place of its own. */
    Layout layout() {
        List<Placement> out = new ArrayList<>();
        List<Laid> kept = new ArrayList<>();
        int[] wanted = new int[parts.size()];
        for (int i = 0; i < layout.placements().size(); i++) {
            Placement p = layout.placements().get(i);
            int part = number(p.partId());
            if (part < 0 || locked.contains(i) && !known(p, part)) {
                return null;
            }
            if (locked.contains(i)) {
                out.add(p);
                kept.add(frame.laid(new Spot(part, p.pose(), 0), 0));
            } else {
                wanted[part]++;
            }
        }
        SheetFill best = stock.isEmpty() ? null : best(kept, wanted);
        if (best == null) {
            return null;
        }
        best.laid().stream().skip(kept.size())
                .forEach(l -> out.add(new Placement(parts.get(l.kind()).part().id(), frame.spot(l, 0).pose())));
        return new Layout(layout.sheet(), out, layout.runs());
    }

    private int number(String id) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).part().id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether the piece lies at one of its part's angles and within the usable region. */
    private boolean known(Placement p, int part) {
        if (stock.isEmpty() || !parts.get(part).part().anglesDeg().contains(p.pose().angleDeg())) {
            return false;
        }
        Turn t = Turn.of(parts.get(part).part().shape(), p.pose().angleDeg());
        Region r = stock.region(0);
        double x = p.pose().x() + t.minX() - r.xMm();
        double y = p.pose().y() + t.minY() - r.yMm();
        return x >= -ShapeBook.HAIR_MM && y >= -ShapeBook.HAIR_MM && Ticks.of(x) + t.length() <= r.length() + 1
                && Ticks.of(y) + t.width() <= r.width() + 1;
    }

    /** How far the pieces of a layout reach along the sheet, in mm. */
    double reach(Layout l) {
        return l.placements().stream().mapToDouble(p -> {
            Turn t = Turn.of(parts.get(number(p.partId())).part().shape(), p.pose().angleDeg());
            return p.pose().x() + t.minX() + Ticks.mm(t.length());
        }).max().orElse(0);
    }

    private SheetFill best(List<Laid> kept, int[] wanted) {
        ShapeFiller filler = new ShapeFiller(stock, frame, book, work);
        ShapeOrders orders = new ShapeOrders(stock, parts, book);
        SplittableRandom random = new SplittableRandom(job.search().seed());
        List<int[]> fixed = orders.fixed();
        int all = kept.size() + Arrays.stream(wanted).sum();
        SheetFill best = null;
        for (int round = 0; round < MOST_ROUNDS && (best == null || !work.spent()); round++) {
            TurnRule rule = TurnRule.values()[round % TurnRule.values().length];
            int order = round / TurnRule.values().length;
            SheetFill fill = filler.fill(0, kept, wanted, order < fixed.size() ? fixed.get(order)
                    : orders.disturbed(random, 0.4), rule);
            boolean better = best == null || fill.size() > best.size()
                    || fill.size() == best.size() && fill.reach() < best.reach() - 1e-6;
            best = better ? fill : best;
            if (best.size() == all && order > fixed.size()) {
                break;
            }
        }
        return best;
    }
}
