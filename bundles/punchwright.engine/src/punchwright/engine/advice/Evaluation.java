// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Works an addition out: every order again with it on the machines worth looking at; an order that gains nothing stays as
 * it is.
 */
final class Evaluation {

    private final Book book;
    private final Today today;
    private final Prospect prospect;
    private final BookCost then;
    private final List<PartSaving> parts = new ArrayList<>();
    private final List<MadePossible> possible = new ArrayList<>();
    private double all;
    private double pressSeconds;
    private double press;
    private double wear;
    private double setUps;
    private double depreciation;

    Evaluation(Book book, Today today, Prospect prospect) {
        this.book = book;
        this.today = today;
        this.prospect = prospect;
        then = new BookCost(book, prospect.owned());
    }

    /** The worth; null as soon as it cannot save {@code atLeast} a year (never for one that makes something possible). */
    Worth worth(double atLeast) {
        List<BookOrder> orders = new ArrayList<>(book.job().orders());
        orders.sort(Comparator.comparingDouble(o -> -prospect.most(o)));
        double open = prospect.most();
        for (BookOrder o : orders) {
            if (book.job().options().pruned() && !prospect.opens() && all + open < atLeast - 1e-9) {
                return null;
            }
            open -= prospect.most(o);
            order(o);
        }
        parts.sort(Comparator.comparingDouble((PartSaving p) -> -p.perYear()).thenComparing(PartSaving::order)
                .thenComparing(PartSaving::part));
        return new Worth(prospect.addition(), new Saving(all, pressSeconds / 3600, press, wear, setUps,
                all - press - wear - setUps,
                depreciation), parts, possible);
    }

    private void order(BookOrder o) {
        OrderOnMachine now = today.best(o);
        OrderOnMachine best = now;
        for (int m : prospect.machines(o)) {
            OrderOnMachine next = then.on(o, m);
            opened(o, today.on(o, m), next);
            best = next.betterThan(best) ? next : best;
        }
        if (best != now) {
            saved(o, now, best);
        }
    }

    private void saved(BookOrder o, OrderOnMachine now, OrderOnMachine best) {
        double times = o.timesPerYear();
        for (int i = 0; i < o.demands().size(); i++) {
            PartLine a = now.lines().get(i);
            PartLine b = best.lines().get(i);
            if (a.made() && b.made()) {
                part(o, i, now.machine(), best.machine(), a, b);
            }
        }
        if (now.made() == best.made()) {
            setUps += times * (now.setUps() - best.setUps());
            all += times * (now.setUps() - best.setUps());
        }
    }

    private void part(BookOrder o, int i, int machineNow, int machineThen, PartLine a, PartLine b) {
        double times = o.timesPerYear();
        double saves = times * (a.cost() - b.cost());
        all += saves;
        pressSeconds += times * (a.pressSeconds() - b.pressSeconds());
        press += times * (a.pressSeconds() * book.rate(machineNow) - b.pressSeconds() * book.rate(machineThen)) / 3600;
        wear += times * (a.wear() - b.wear());
        if (prospect.addition().kind() == AdditionKind.TOOL) {
            depreciation += times * o.demands().get(i).quantity() * b.choice().depreciation().getOrDefault(prospect.addition()
                    .tool()
                    .id(), 0.0);
        }
        if (Math.abs(saves) > 1e-9) {
            parts.add(new PartSaving(o.number(), o.demands().get(i).name(), name(machineNow), name(machineThen), a.choice()
                    .hits(),
                    b.choice().hits(), saves));
        }
    }

    private void opened(BookOrder o, OrderOnMachine now, OrderOnMachine next) {
        for (int i = 0; i < o.demands().size(); i++) {
            int part = i;
            if (!now.lines().get(i).made() && next.lines().get(i).made()) {
                now.refusals().stream().filter(r -> r.part() == part).findFirst().ifPresent(r -> possible.add(new MadePossible(o
                        .number(), name(now.machine()), o.demands().get(part).name(), next.made() == o.demands().size(),
                        today.nowhere(o, part), r.why())));
            }
        }
    }

    private String name(int machine) {
        return book.job().machines().get(machine).machine().name();
    }
}
