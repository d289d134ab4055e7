// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Operation;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.ToolUse;
import punchwright.ui.findings.FindingRow;
import punchwright.ui.findings.FindingTable;
import punchwright.ui.sheet.BalloonCells;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;
import punchwright.ui.tooling.LoadingPage;
import punchwright.ui.tooling.Loadings;

/** The tables beside the sheet: tools, operations, loading, times, ledger, findings. */
final class PlanTabs extends Composite {

    private final DataTable<ToolUse> tools;
    private final DataTable<Operation> operations;
    private final LoadingPage loading;
    private final DataTable<Times.Line> times;
    private final FindingTable findings;
    private Consumer<ToolUse> onTool = use -> { };
    private ToolUse marked;

    PlanTabs(Composite parent, Plan plan) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        TabFolder folder = new TabFolder(this, SWT.TOP);
        tools = new DataTable<>(folder, Texts.of("plan.tools"), PlanColumns.TOOLS);
        operations = new DataTable<>(folder, Texts.of("plan.operations"), PlanColumns.OPERATIONS);
        loading = new LoadingPage(folder);
        times = new DataTable<>(folder, Texts.of("plan.times"), PlanColumns.TIMES);
        LedgerTree ledger = new LedgerTree(folder);
        findings = new FindingTable(folder);
        tab(folder, "plan.tools", tools.control());
        tab(folder, "plan.operations", operations.control());
        tab(folder, "plan.loading", loading);
        tab(folder, "plan.times", times.control());
        tab(folder, "plan.ledger", ledger.control());
        TabItem findingsTab = tab(folder, "place.findings", findings.table().control());
        findingsTab.setText(Texts.of("place.findings") + " (" + plan.getFindings().size() + ")");
        times.setRows(Times.of(plan));
        ledger.show(plan, PlanTitle.currency(plan));
        findings.table().setRows(plan.getFindings().stream().map(f -> FindingRow.of(f, plan.getName())).toList());
        if (plan.getJobs().isEmpty()) {
            folder.setSelection(findingsTab);
        }
        BalloonCells.in(tools.control(), 0);
        tools.onSelect(use -> {
            marked = use;
            onTool.accept(use);
        });
    }

    private static TabItem tab(TabFolder folder, String key, Control control) {
        TabItem item = new TabItem(folder, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(control);
        return item;
    }

    /** Shows the tools of the layout's job, those that this sheet does not use in thin writing. */
    void show(Layout layout) {
        SheetJob job = (SheetJob) layout.eContainer();
        Set<ToolUse> here = new HashSet<>();
        layout.getHits().forEach(hit -> here.add(hit.getToolUse()));
        tools.decorate((item, use) -> item.setForeground(here.contains(use) ? null : Inks.of(Ink.PENCIL)));
        tools.setRows(job.getToolUses());
        operations.setRows(job.getOperations());
        loading.show(Loadings.of(job), ((Plan) job.eContainer()).getMachine());
    }

    void onTool(Consumer<ToolUse> what) {
        onTool = what;
    }

    void onOperation(Consumer<Operation> what) {
        operations.onSelect(what);
    }

    void onFinding(Consumer<FindingRow> what) {
        findings.table().onOpen(what);
    }

    /** Marks the tool and operation of a hit without telling the picture. */
    void mark(ToolUse use, Operation operation) {
        marked = use;
        tools.markOnly(use == null ? List.of() : List.of(use));
        operations.markOnly(operation == null ? List.of() : List.of(operation));
    }

    ToolUse markedTool() {
        return marked;
    }
}
