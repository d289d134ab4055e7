// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.ToolWeighing;

/** Entry of the advice: what to buy, given the order book. */
public final class Advisor {

    private static final Comparator<Worth> BY_SAVING = Comparator
            .comparingDouble((Worth w) -> -Math.rint(w.saving().perYear() * 1e6)).thenComparing(w -> -w.possible().size())
            .thenComparing(w -> w.addition().price().value()).thenComparing(w -> w.addition().id());
    private static final Comparator<Worth> BY_POSSIBLE = Comparator
            .comparing((Worth w) -> -w.possible().stream().filter(MadePossible::nowhere).count())
            .thenComparing(w -> -w.possible().stream().filter(MadePossible::whole).map(MadePossible::order).distinct().count())
            .thenComparing(w -> -w.possible().size()).thenComparing(BY_SAVING);
    /** Savings below are arithmetic, currency a year. */
    private static final double NOTHING = 0.005;

    private final AdviceJob job;
    private final Progress progress;
    private final Book book;
    private final Map<String, Double> bounds = new LinkedHashMap<>();
    private final List<Worth> saving = new ArrayList<>();
    private final List<Worth> enabling = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private int workedOut;

    private Advisor(AdviceJob job, Progress progress) {
        this.job = job;
        this.progress = progress;
        book = new Book(job, progress);
    }

    /**
     * Ranks what could be bought. Never fails for a reason of the trade: what cannot be made is part of the answer. The same
     * input
     * gives the same ranking.
     *
     * @param job      order book, machines, tools and holders owned
     * @param progress told about each addition worked out; asked whether to go on
     * @throws CancelledException when the person cancels
     */
    public static Advice advise(AdviceJob job, Progress progress) {
        return new Advisor(job, progress).run();
    }

    private Advice run() {
        if (book.parts().isEmpty()) {
            Finding none = Finding.of(AdviceReason.NO_ORDERS, "order book");
            return new Advice(List.of(), List.of(), List.of(), 0, 0, 0, 0, List.of(none));
        }
        progress.at("the order book with the tools owned", 0);
        Today today = new Today(book);
        List<Addition> additions = Additions.of(book, today.cost());
        List<Prospect> prospects = prospects(today, additions);
        int open = search(today, prospects);
        note(additions, prospects, open);
        return new Advice(rows(saving), rows(enabling), today.orders(), today.perYear(), additions.size(), workedOut,
                book.choices(),
                findings);
    }

    /** By falling bound; what opens something first. */
    private List<Prospect> prospects(Today today, List<Addition> additions) {
        SavingBound bound = new SavingBound(book, today.cost());
        List<Prospect> all = new ArrayList<>();
        for (Addition a : additions) {
            progress.check();
            progress.at("bounds", 0.1);
            Prospect p = new Prospect(book, today, bound, a);
            bounds.put(a.id(), p.most());
            all.add(p);
        }
        all.sort(Comparator.comparing((Prospect p) -> !p.opens()).thenComparingDouble(p -> -p.most())
                .thenComparing(p -> p.addition().id()));
        return all;
    }

    /** Works out one after the other; returns how many were left at the limit of work. */
    private int search(Today today, List<Prospect> prospects) {
        for (int i = 0; i < prospects.size(); i++) {
            Prospect p = prospects.get(i);
            boolean ruledOut = job.options().pruned() && !p.opens() && (p.most() <= NOTHING || p.most() < last() - 1e-9);
            if (ruledOut) {
                return 0;
            }
            if (book.choices() >= job.options().mostWork()) {
                return prospects.size() - i;
            }
            progress.at(p.addition().name(), 0.2 + 0.8 * i / prospects.size());
            Worth w = new Evaluation(book, today, p).worth(last());
            workedOut++;
            if (w != null) {
                keep(w);
            }
        }
        return 0;
    }

    /** What the last place of the ranking saves; 0 while there are places left. */
    private double last() {
        return saving.size() < job.options().top() ? 0 : saving.getLast().saving().perYear();
    }

    private void keep(Worth w) {
        if (w.saving().perYear() > NOTHING) {
            insert(saving, w, BY_SAVING);
        }
        if (!w.possible().isEmpty()) {
            insert(enabling, w, BY_POSSIBLE);
        }
    }

    private void insert(List<Worth> list, Worth w, Comparator<Worth> order) {
        list.add(w);
        list.sort(order);
        if (list.size() > job.options().top()) {
            list.removeLast();
        }
    }

    private List<Recommendation> rows(List<Worth> list) {
        List<Recommendation> rows = new ArrayList<>();
        for (Worth w : list) {
            double years = Payback.years(w.addition().price().value(), w.saving().perYear(), w.saving().depreciation());
            rows.add(new Recommendation(rows.size() + 1, w.addition(), w.saving(), years, bounds.get(w.addition().id()),
                    w.possible(),
                    w.parts()));
        }
        return rows;
    }

    private void note(List<Addition> additions, List<Prospect> prospects, int open) {
        findings.add(Finding.of(AdviceReason.NOT_COUNTED, "advice"));
        findings.add(Finding.of(AdviceReason.EACH_ALONE, "advice", ChoiceWeights.USUAL.partsPerChange()));
        findings.add(Finding.of(AdviceReason.NOT_ADDITIVE, "advice"));
        if (open > 0) {
            findings.add(Finding.of(AdviceReason.WORK_LIMIT, "advice", book.choices(), open,
                    prospects.subList(prospects.size() - open,
                    prospects.size()).stream().mapToDouble(Prospect::most).max().orElse(0)));
        }
        if (saving.isEmpty() && enabling.isEmpty()) {
            findings.add(Finding.of(AdviceReason.NOTHING_SAVES, "advice", additions.size()));
        }
        job.options().prices().keySet().stream().filter(k -> additions.stream().noneMatch(a -> a.id().equals(k) || a.name()
                .equals(
                k))).forEach(k -> findings.add(Finding.of(AdviceReason.UNKNOWN_PRICE, "price", k)));
        List<Worth> shown = new ArrayList<>(saving);
        enabling.stream().filter(w -> !shown.contains(w)).forEach(shown::add);
        shown.stream().map(Worth::addition).filter(a -> a.price().basis() == Price.Basis.TABLE)
                .forEach(a -> findings.add(Finding.of(AdviceReason.TABLE_PRICE, a.name(), a.price().value())));
        notProven();
    }

    private void notProven() {
        for (BookPart part : book.parts()) {
            for (int m = 0; m < job.machines().size(); m++) {
                ToolWeighing w = book.weighed(m, part);
                if (Double.isFinite(w.costSeconds()) && w.boundSeconds() < w.costSeconds() * (1 - 1e-6)) {
                    findings.add(Finding.of(AdviceReason.NOT_PROVEN, part.demand().name() + " on " + job.machines().get(m)
                            .machine()
                            .name(), w.costSeconds(), w.boundSeconds()));
                }
            }
        }
    }
}
