// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.ToolLoading;
import punchwright.engine.tooling.ToolUse;
import punchwright.engine.tooling.UsedTool;

/**
 * What an order costs on a machine with what is owned: the choice of tools of each part, the set-up of each tool of a sheet, and
 * tools that find no place (set by hand, or refused) or stand in a holder.
 */
final class BookCost {

    private final Book book;
    private final Owned owned;
    private final Map<String, PartChoice> choices = new LinkedHashMap<>();

    BookCost(Book book, Owned owned) {
        this.book = book;
        this.owned = owned;
    }

    /** The order on the machine that makes most of its parts, then the cheapest; the first of equals. */
    OrderOnMachine best(BookOrder order) {
        OrderOnMachine best = null;
        for (int m = 0; m < book.job().machines().size(); m++) {
            OrderOnMachine next = on(order, m);
            best = next.betterThan(best) ? next : best;
        }
        return best;
    }

    OrderOnMachine on(BookOrder order, int machine) {
        PartLine[] lines = new PartLine[order.demands().size()];
        List<Refusal> refusals = new ArrayList<>();
        double setUps = 0;
        for (List<Integer> sheet : book.sheets(order).values()) {
            setUps += sheet(order, machine, sheet, lines, refusals);
        }
        return new OrderOnMachine(machine, List.of(lines), setUps, refusals);
    }

    private double sheet(BookOrder order, int machine, List<Integer> sheet, PartLine[] lines, List<Refusal> refusals) {
        Map<String, UsedTool> used = new LinkedHashMap<>();
        for (int i : sheet) {
            PartChoice c = choice(machine, book.part(order.demands().get(i)));
            c.refusals().forEach(f -> refusals.add(new Refusal(i, false, f)));
            if (c.made()) {
                c.used().values().forEach(u -> used.merge(u.tool().id(), u, BookCost::both));
            }
        }
        Machine m = owned.machine(book.job().machines().get(machine).machine());
        Loading loading = ToolLoading.load(m, List.copyOf(used.values()), owned.holders(), book.job().rules().forceReserve());
        List<Finding> errors = loading.findings().stream().filter(Finding::isError).toList();
        Map<String, Double> changes = changes(m, loading);
        boolean any = false;
        for (int i : sheet) {
            lines[i] = line(order, machine, i, errors.isEmpty(), changes);
            any |= lines[i].made();
            if (lines[i].choice().made()) {
                errors.forEach(f -> refusals.add(new Refusal(i, true, f)));
            }
        }
        return any ? used.size() * perSetUp(machine) : 0;
    }

    /** Setting up one tool: the setter and the standing machine. */
    double perSetUp(int machine) {
        return book.job().setUpMinutesPerTool() / 60 * (book.job().setUpPerHour() + book.rate(machine));
    }

    private PartLine line(BookOrder order, int machine, int i, boolean placed, Map<String, Double> changes) {
        BookPart part = book.part(order.demands().get(i));
        PartChoice c = choice(machine, part);
        int pieces = order.demands().get(i).quantity();
        double perChange = ChoiceWeights.USUAL.partsPerChange();
        double more = c.used().keySet().stream().mapToDouble(id -> changes.getOrDefault(id, 0.0)).sum() / perChange;
        double cost = pieces * (c.costSeconds() + more) * book.rate(machine) / 3600;
        return new PartLine(i, c, c.made() && placed, cost, pieces * c.seconds(), pieces * c.wear());
    }

    private PartChoice choice(int machine, BookPart part) {
        String key = machine + "|" + part.number();
        PartChoice known = choices.get(key);
        if (known == null) {
            known = owned.addition() == null ? book.today(machine, part) : book.remembered(machine, part, owned);
            choices.put(key, known);
        }
        return known;
    }

    private static UsedTool both(UsedTool a, UsedTool b) {
        TreeSet<Double> angles = new TreeSet<>(a.anglesDeg());
        angles.addAll(b.anglesDeg());
        return new UsedTool(a.tool(), List.copyOf(angles), a.hits() + b.hits(), Math.max(a.forceN(), b.forceN()));
    }

    /**
     * Seconds by which the change to a tool differs from the usual one, by tool: more where it is set by hand; less for the
     * second
     * and later inserts of a holder on a machine that changes only by hand.
     */
    private static Map<String, Double> changes(Machine m, Loading loading) {
        Times t = m.times();
        Map<String, Double> more = new LinkedHashMap<>();
        for (ToolUse u : loading.uses()) {
            if (u.place() == null) {
                more.put(u.tool().id(), t.handChangeS() - t.toolChangeS());
            } else if (u.holder() != null && u.insert() > 1 && byHandOnly(t)) {
                more.put(u.tool().id(), Math.min(0, t.insertChangeS() - t.toolChangeS()));
            }
        }
        return more;
    }

    static boolean byHandOnly(Times t) {
        return t.toolChangeS() >= t.handChangeS() - 1e-9;
    }
}
