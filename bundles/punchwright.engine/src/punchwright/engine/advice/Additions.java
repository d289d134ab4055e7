// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.DieClearance;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolCheck;
import punchwright.engine.tooling.ToolingReason;

/** The search space: everything not owned that the features of the order book could want, each once, in a fixed order. */
final class Additions {

    private final Book book;
    private final AdviceJob job;
    private final PriceBook prices;
    private final Map<String, Addition> all = new LinkedHashMap<>();

    private Additions(Book book) {
        this.book = book;
        job = book.job();
        prices = new PriceBook(job);
    }

    static List<Addition> of(Book book, BookCost today) {
        Additions a = new Additions(book);
        a.tools();
        a.dies();
        a.second(today);
        new MachineAdditions(book, a.prices).of(today).forEach(a::put);
        return List.copyOf(a.all.values());
    }

    /** The engineer's price by id or name, where there is one. */
    static Price given(AdviceJob job, String id, String name, Price otherwise) {
        Double value = job.options().prices().getOrDefault(id, job.options().prices().get(name));
        return value == null ? otherwise : new Price(value, Price.Basis.GIVEN, "given");
    }

    private void put(Addition a) {
        all.putIfAbsent(a.id(), a);
    }

    private void tools() {
        Drafts drafts = new Drafts(job, prices);
        OpeningTools openings = new OpeningTools(drafts);
        EdgeTools edges = new EdgeTools(drafts, job.rules());
        ClusterTools clusters = new ClusterTools(drafts);
        for (int m = 0; m < job.machines().size(); m++) {
            Machine machine = job.machines().get(m).machine();
            for (BookPart part : book.parts()) {
                for (FeatureWays ways : book.weighed(m, part).ways()) {
                    openings.add(ways, part, machine);
                    edges.add(ways, part, machine);
                }
                edges.addDetails(part, machine);
                clusters.add(part, machine);
            }
        }
        drafts.additions().stream().filter(a -> job.tools().stream().noneMatch(t -> same(t, a.tool()))).forEach(this::put);
    }

    /** Whether a tool owned has the same shape, sizes and dies. */
    private static boolean same(Tool owned, Tool wanted) {
        return owned.shape() == wanted.shape() && near(owned.lengthMm(), wanted.lengthMm()) && near(owned.widthMm(),
                wanted.widthMm())
                && near(owned.cornerRadiusMm(), wanted.cornerRadiusMm()) && owned.cluster().equals(wanted.cluster())
                && owned.freeContour() == null && owned.onHand() > 0 && wanted.clearancesTotalMm().stream()
                        .allMatch(c -> owned.clearancesTotalMm().stream().anyMatch(o -> o >= 0.4 * c && o <= 2.2 * c))
                && near(owned.fixedAngleDeg(), wanted.fixedAngleDeg());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < 0.011;
    }

    /** A die for each tool that the lack of one keeps from a part it would serve. */
    private void dies() {
        for (int m = 0; m < job.machines().size(); m++) {
            for (BookPart part : book.parts()) {
                double need = DieClearance.totalMm(part.demand().material(), part.demand().thicknessMm());
                for (Tool t : job.tools()) {
                    boolean lacks = ToolCheck.refusal(book.tooling(m, part, Owned.today(job)), t)
                            .filter(f -> f.reason() == ToolingReason.CLEARANCE).isPresent();
                    if (lacks && serves(m, part, t)) {
                        die(t, Math.rint(need * 100) / 100, part);
                    }
                }
            }
        }
    }

    /** Whether it makes an opening in one hit that takes several today or none, or cuts edges longer than all usable tools. */
    private boolean serves(int m, BookPart part, Tool t) {
        for (FeatureWays w : book.weighed(m, part).ways()) {
            boolean open = w.alternatives().stream().noneMatch(a -> a.chosen() && a.hits() <= w.features().size());
            if (open && w.features().stream().anyMatch(f -> f.isOpening() ? ToolCheck.exact(f, t, job.rules())
                    : Reach.meets(t, f, job.rules()))) {
                return true;
            }
        }
        return false;
    }

    private void die(Tool t, double need, BookPart part) {
        List<Double> clearances = new ArrayList<>(t.clearancesTotalMm());
        clearances.add(need);
        clearances.sort(null);
        String id = "die-" + t.id() + "-" + need;
        String name = "Die " + need + " mm for " + t.name();
        put(new Addition(AdditionKind.DIE, id, name, Tools.withClearances(t, clearances), null, null, given(job, id, name,
                prices.die(
                t)), part.demand().name()));
    }

    /** One more of each tool that is needed at more angles than it is owned. */
    private void second(BookCost today) {
        for (BookOrder o : job.orders()) {
            for (int m = 0; m < job.machines().size(); m++) {
                for (Refusal r : today.on(o, m).refusals()) {
                    Finding f = r.why();
                    if (f.reason() == ToolingReason.ANGLES) {
                        job.tools().stream().filter(t -> t.name().equals(f.subject())).forEach(t -> second(t, o));
                    } else if (f.reason() == ToolingReason.ON_HAND) {
                        fewOnHand(m, book.part(o.demands().get(r.part()))).forEach(t -> second(t, o));
                    }
                }
            }
        }
    }

    private List<Tool> fewOnHand(int m, BookPart part) {
        return job.tools().stream().filter(t -> t.shape() != punchwright.engine.tooling.ToolShape.ROUND)
                .filter(t -> book.weighed(m, part).ways().stream().anyMatch(w -> w.alternatives().stream()
                        .anyMatch(a -> a.tools().contains(t)))).toList();
    }

    private void second(Tool t, BookOrder o) {
        String id = "second-" + t.id();
        String name = "One more of " + t.name();
        put(new Addition(AdditionKind.SECOND, id, name, Tools.withOneMore(t), null, null, given(job, id, name, prices.second(t)),
                "order " + o.number()));
    }
}
