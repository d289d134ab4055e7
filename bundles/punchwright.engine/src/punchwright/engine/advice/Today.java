// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;

/** The order book with what is owned today: every order on every machine, and the best of them. */
final class Today {

    private final Book book;
    private final BookCost cost;
    private final Map<String, List<OrderOnMachine>> on = new LinkedHashMap<>();
    private final Map<String, OrderOnMachine> best = new LinkedHashMap<>();

    Today(Book book) {
        this.book = book;
        cost = new BookCost(book, Owned.today(book.job()));
        for (BookOrder o : book.job().orders()) {
            List<OrderOnMachine> all = new ArrayList<>();
            for (int m = 0; m < book.job().machines().size(); m++) {
                OrderOnMachine next = cost.on(o, m);
                all.add(next);
                best.merge(o.number(), next, (a, b) -> b.betterThan(a) ? b : a);
            }
            on.put(o.number(), all);
        }
    }

    BookCost cost() {
        return cost;
    }

    OrderOnMachine on(BookOrder o, int machine) {
        return on.get(o.number()).get(machine);
    }

    OrderOnMachine best(BookOrder o) {
        return best.get(o.number());
    }

    boolean nowhere(BookOrder o, int part) {
        return on.get(o.number()).stream().noneMatch(m -> m.lines().get(part).made());
    }

    double perYear() {
        return book.job().orders().stream().mapToDouble(o -> o.timesPerYear() * best(o).cost()).sum();
    }

    List<OrderToday> orders() {
        return book.job().orders().stream().map(this::order).toList();
    }

    private OrderToday order(BookOrder o) {
        OrderOnMachine b = best(o);
        List<Finding> refusals = new ArrayList<>();
        for (OrderOnMachine m : on.get(o.number())) {
            m.refusals().forEach(r -> refusals.add(r.why().within(book.job().machines().get(m.machine()).machine().name())));
        }
        String name = b.made() == 0 ? "" : book.job().machines().get(b.machine()).machine().name();
        return new OrderToday(o.number(), name, o.timesPerYear() * b.cost(), b.made(), o.demands().size(), refusals);
    }
}
