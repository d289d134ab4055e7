// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.files.Workspace;
import punchwright.model.shop.Machine;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.Order;
import punchwright.planner.layouts.KeptWriter;
import punchwright.planner.layouts.OrderLayouts;
import punchwright.planner.plans.PlanWriter;

/** Lays out an order on one machine or on each, without a plan; keeps the layouts with the order when asked to. */
final class LayoutOperation implements ShopOperation {

    @Override
    public String name() {
        return "layout";
    }

    @Override
    public String summary() {
        return "lay out an order on a machine, or on each in use, without a plan; tells stock, use, cost, bound, remnants";
    }

    @Override
    public String usage() {
        return "ORDER [--machine MACHINE] [--anew] [--keep] [--web MM] [--seconds N] [--work STEPS] [--json]";
    }

    @Override
    public String details(List<String> words) {
        return """

                  --anew     layouts kept with the order are put aside; without it they stay as they are
                  --keep     keeps the layouts with the order, for planning and for the workbench
                  --web      web between parts in mm; without it as far as a hit beside a part reaches
                  --seconds  stops the search after that time and takes the best so far
                  --work     trial placements at most for each material and thickness
                """;
    }

    @Override
    public Set<String> options() {
        return Set.of("machine", "anew", "keep", "web", "seconds", "work", "json");
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().size() != 1) {
            throw new UsageException("layout takes one order number");
        }
        boolean keep = call.options().containsKey("keep");
        OrderLayouts.Options options = new OrderLayouts.Options(!call.options().containsKey("anew"), true,
                Numbers.above0(call, "web", 0), Numbers.count(call, "work", 0));
        double seconds = Numbers.above0(call, "seconds", 0);
        Progress progress = seconds > 0 ? new Deadline(call.progress(), seconds) : call.progress();
        try (Workspace workspace = Workspace.open(call.workspace(), keep ? Workspace.Access.WRITE : Workspace.Access.READ)) {
            Order order = Finder.order(workspace, call.words().getFirst());
            String wanted = call.option("machine", null);
            List<Machine> machines = wanted == null ? PlanOperation.inUse(workspace) : List.of(Finder.machine(workspace, wanted));
            OrderLayouts layouts = new OrderLayouts(workspace.library(), workspace.paths());
            List<OrderLayouts.Result> results = new ArrayList<>();
            for (Machine machine : machines) {
                results.add(layouts.of(order, machine, options, progress));
            }
            if (keep) {
                keep(workspace, order, results, options.withKept());
            }
            return outcome(order, results, workspace.library().getCurrency());
        } catch (CancelledException e) {
            return new Outcome(ExitCode.FINDINGS, List.of("cancelled before there was a layout"), List.of(), List.of(),
                    List.of());
        }
    }

    /** Layouts that are kept already stand first in a result and stay the records they are. */
    private static void keep(Workspace workspace, Order order, List<OrderLayouts.Result> results, boolean withKept)
            throws IOException {
        for (OrderLayouts.Result result : results) {
            if (!withKept) {
                order.getLayouts().removeIf(l -> l.getMachine() == result.machine());
            }
            List<KeptLayout> before = List.copyOf(order.getLayouts());
            for (KeptLayout made : new KeptWriter(workspace.library(), order).write(result)) {
                if (before.stream().noneMatch(b -> KeptWriter.lieAlike(b, made))) {
                    order.getLayouts().add(made);
                }
            }
        }
        workspace.save(order);
    }

    private static Outcome outcome(Order order, List<OrderLayouts.Result> results, String currency) {
        List<String> lines = new ArrayList<>();
        List<Map<String, Object>> records = new ArrayList<>();
        Map<String, Finding> findings = new LinkedHashMap<>();
        for (OrderLayouts.Result r : results) {
            lines.addAll(LayoutTable.of(order.getNumber(), r, currency));
            records.add(LayoutRecord.of(order.getNumber(), r, currency));
            r.findings().forEach(f -> findings.putIfAbsent(f.code() + f.subject() + f.message(), f));
        }
        boolean laid = results.stream().anyMatch(r -> r.sheets().stream().anyMatch(s -> !s.nesting().layouts().isEmpty()));
        ExitCode code = results.stream().anyMatch(OrderLayouts.Result::complete) ? ExitCode.GOOD
                : laid ? ExitCode.FINDINGS : ExitCode.INPUT;
        return new Outcome(code, lines, PlanWriter.findings(List.copyOf(findings.values())), List.of(), List.of(), records);
    }

    /** Says that it is enough when the time is over; what must be done before there is a layout goes on. */
    private static final class Deadline implements Progress {

        private final Progress told;
        private final long end;

        Deadline(Progress told, double seconds) {
            this.told = told;
            this.end = System.nanoTime() + (long) (seconds * 1e9);
        }

        @Override
        public void at(String step, double share) {
            told.at(step, share);
        }

        @Override
        public void best(String words, double share) {
            told.best(words, share);
        }

        @Override
        public boolean cancelled() {
            return told.cancelled() || System.nanoTime() > end;
        }

        @Override
        public void check() {
            told.check();
        }
    }
}
