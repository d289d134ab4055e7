// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import punchwright.engine.advice.Advice;
import punchwright.engine.advice.AdviceOptions;
import punchwright.engine.advice.Advisor;
import punchwright.engine.finding.Finding;
import punchwright.model.files.Workspace;
import punchwright.model.shop.Machine;
import punchwright.planner.plans.OrderBook;
import punchwright.planner.plans.PlanWriter;

/** Which tool, holder or machine option to buy, given the orders of the workspace. */
final class AdviseOperation implements ShopOperation {

    @Override
    public String name() {
        return "advise";
    }

    @Override
    public String summary() {
        return "rank tools, holders and machine options not owned by what they save in a year on the orders of the workspace";
    }

    @Override
    public String usage() {
        return "[--machine MACHINE] [--top N] [--per-year TIMES] [--price NAME=VALUE]... [--work CHOICES] [--json]";
    }

    @Override
    public Set<String> options() {
        return Set.of("machine", "top", "per-year", "price", "work", "json");
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (!call.words().isEmpty()) {
            throw new UsageException("advise takes no words; it looks at every order of the workspace");
        }
        AdviceOptions usual = AdviceOptions.USUAL;
        AdviceOptions options = new AdviceOptions(Numbers.count(call, "top", usual.top()), Numbers.count(call, "work", usual
                .mostWork()), prices(call), true, true);
        double perYear = Numbers.above0(call, "per-year", 0);
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            String wanted = call.option("machine", null);
            List<Machine> machines = wanted == null ? PlanOperation.inUse(workspace) : List.of(Finder.machine(workspace, wanted));
            OrderBook.Reading reading = new OrderBook(workspace.library(), workspace.paths()).read(workspace.orders(), machines,
                    perYear, options);
            return outcome(Advisor.advise(reading.job(), call.progress()), reading.findings(), workspace.library().getCurrency());
        }
    }

    private static Outcome outcome(Advice advice, List<Finding> input, String currency) {
        List<Finding> findings = new ArrayList<>(input);
        findings.addAll(advice.findings());
        boolean errors = findings.stream().anyMatch(Finding::isError);
        return new Outcome(errors ? ExitCode.INPUT : ExitCode.GOOD, errors ? List.of() : AdviceTable.of(advice, currency),
                PlanWriter
                .findings(findings), List.of(), List.of(), AdviceRecord.of(advice, currency, findings));
    }

    private static Map<String, Double> prices(Call call) {
        Map<String, Double> prices = new TreeMap<>();
        for (String given : call.all("price")) {
            int at = given.lastIndexOf('=');
            if (at < 1) {
                throw new UsageException("--price wants NAME=VALUE, as in --price \"Round 7.2=85\"; given: " + given);
            }
            prices.put(given.substring(0, at).strip(), Numbers.atLeast0("--price", given.substring(at + 1)));
        }
        return prices;
    }
}
