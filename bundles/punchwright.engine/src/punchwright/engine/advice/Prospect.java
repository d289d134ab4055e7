// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;

/** What an addition can save at most, order by order, and on which machines it may make something possible. */
final class Prospect {

    private final Book book;
    private final Today today;
    private final SavingBound bound;
    private final Addition addition;
    private final Owned owned;
    private final Map<String, Double> most = new LinkedHashMap<>();
    private final Map<String, List<Integer>> machines = new LinkedHashMap<>();
    private boolean opens;

    Prospect(Book book, Today today, SavingBound bound, Addition addition) {
        this.book = book;
        this.today = today;
        this.bound = bound;
        this.addition = addition;
        owned = Owned.with(book.job(), addition);
        book.job().orders().forEach(this::look);
    }

    Addition addition() {
        return addition;
    }

    Owned owned() {
        return owned;
    }

    /** Whether it makes a part that a machine refuses today, or may do so by another loading of places. */
    boolean opens() {
        return opens;
    }

    /** Machines on which the order may become cheaper than today or more of it be made. */
    List<Integer> machines(BookOrder o) {
        return machines.get(o.number());
    }

    /** Currency a year. */
    double most(BookOrder o) {
        return most.get(o.number());
    }

    double most() {
        return most.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private void look(BookOrder o) {
        OrderOnMachine now = today.best(o);
        List<Integer> worth = new ArrayList<>();
        double saves = 0;
        for (int m = 0; m < book.job().machines().size(); m++) {
            OrderOnMachine here = today.on(o, m);
            boolean more = opens(o, here);
            double least = more || here.made() < now.made() ? Double.NaN : leastCost(o, here);
            boolean cheaper = here.made() >= now.made() && !(least >= now.cost() - 1e-9);
            if (more || cheaper || !book.job().options().pruned()) {
                worth.add(m);
            }
            opens |= more;
            saves = Math.max(saves, more ? now.cost() : cheaper ? now.cost() - least : 0);
        }
        machines.put(o.number(), worth);
        most.put(o.number(), o.timesPerYear() * saves);
    }

    private double leastCost(BookOrder o, OrderOnMachine here) {
        if (addition.kind() == AdditionKind.TOOL) {
            return bound.leastCost(o, here, owned);
        }
        boolean touches = o.demands().stream().anyMatch(d -> book.touches(here.machine(), book.part(d), owned));
        return touches ? 0 : here.cost();
    }

    private boolean opens(BookOrder o, OrderOnMachine here) {
        for (Refusal r : here.refusals()) {
            BookPart part = book.part(o.demands().get(r.part()));
            if (book.touches(here.machine(), part, owned) && (r.together() || makes(here.machine(), part))) {
                return true;
            }
        }
        return false;
    }

    /** Whether the part, refused today, is made with the addition; asked only where it meets what is not made. */
    private boolean makes(int m, BookPart part) {
        boolean meets = addition.kind() != AdditionKind.TOOL || book.weighed(m, part).ways().stream()
                .filter(w -> w.alternatives().stream().noneMatch(a -> a.chosen())).anyMatch(w -> meets(w, addition.tool()));
        return meets && book.remembered(m, part, owned).made();
    }

    private boolean meets(FeatureWays w, Tool tool) {
        return w.features().stream().anyMatch(f -> Reach.meets(tool, f, book.job().rules()));
    }
}
