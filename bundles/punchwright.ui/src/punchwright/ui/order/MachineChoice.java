// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.WorkspaceException;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.Severity;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.ui.editor.Editors;
import punchwright.ui.job.Exporting;
import punchwright.ui.job.Messages;
import punchwright.ui.job.Planning;
import punchwright.ui.job.PlanNames;
import punchwright.ui.session.Session;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** The machines in use, each with its plan for the order when there is one: state, sheets, time, cost. Here is planned and exported. */
public final class MachineChoice extends Composite {

    private static final double SECONDS_PER_MINUTE = 60;

    private final Order order;
    private final IWorkbenchWindow window;
    private final DataTable<Line> table;
    private final Runnable follower = this::refresh;

    /**
     * A machine and what it was planned to do.
     *
     * @param machine the machine
     * @param plan    its plan for the order; empty when there is none yet
     */
    public record Line(Machine machine, Optional<Plan> plan) {

        private Double of(java.util.function.ToDoubleFunction<Plan> figure) {
            return plan.map(figure::applyAsDouble).orElse(null);
        }

        private Integer sheets() {
            return plan.map(p -> p.getJobs().stream().flatMap(j -> j.getLayouts().stream()).mapToInt(Layout::getRunCount).sum())
                    .orElse(null);
        }

        private String whyNot() {
            return plan.flatMap(p -> p.getFindings().stream().filter(f -> f.getSeverity() == Severity.ERROR).findFirst())
                    .map(f -> f.getMessage() + " " + f.getRemedy()).orElse("");
        }

        private Integer findings(Severity severity) {
            return plan.map(p -> (int) p.getFindings().stream().filter(f -> f.getSeverity() == severity).count()).orElse(null);
        }
    }

    MachineChoice(Composite parent, Order order, IWorkbenchWindow window) {
        super(parent, SWT.NONE);
        this.order = order;
        this.window = window;
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 4).spacing(8, 4).applyTo(this);
        Label title = new Label(this, SWT.NONE);
        title.setText(Texts.of("order.machines"));
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(title);
        String currency = Session.current().orElseThrow().workspace().library().getCurrency();
        table = new DataTable<>(this, Texts.of("order.machines"), columns(currency));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        Composite buttons = new Composite(this, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(buttons);
        button(buttons, Icons.MAKE_PLAN, "action.plan", this::plan);
        button(buttons, Icons.PLAN, "action.openPlan", this::open);
        button(buttons, Icons.EXPORT, "action.export", this::export);
        table.onOpen(line -> open());
        Session.addListener(follower);
        addDisposeListener(e -> Session.removeListener(follower));
        refresh();
        if (!lines().isEmpty()) {
            table.select(lines().get(0));
        }
    }

    private static List<Column<Line>> columns(String currency) {
        return List.of(Column.text("col.machine", 200, l -> l.machine().getName()),
                Column.text("col.state", 110, l -> l.plan().map(p -> Texts.of(p.getStatus())).orElse(Texts.of("order.notPlanned"))),
                Column.count("col.sheets", 70, Line::sheets),
                Column.number("col.minutes", 90, 1, l -> l.of(p -> p.getTotalTimeS() / SECONDS_PER_MINUTE)),
                new Column<>(Texts.of("col.cost", currency), 110, SWT.RIGHT,
                        l -> l.plan().map(p -> Numbers.fixed(p.getTotalCost(), 2)).orElse(""),
                        l -> l.of(Plan::getTotalCost)),
                Column.count("col.errors", 70, l -> l.findings(Severity.ERROR)),
                Column.count("col.warnings", 90, l -> l.findings(Severity.WARNING)), Column.text("col.whyNot", 420, Line::whyNot));
    }

    private static void button(Composite parent, Icons icon, String key, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Texts.of(key));
        button.setImage(icon.image());
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        GridDataFactory.fillDefaults().applyTo(button);
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Session.current().ifPresent(session -> session.workspace().library().getMachines().stream()
                .filter(m -> m.getStatus() == ItemStatus.IN_USE).forEach(m -> lines.add(new Line(m, planOf(session, m)))));
        return lines;
    }

    private Optional<Plan> planOf(Session session, Machine machine) {
        try {
            return session.workspace().plan(PlanNames.id(order, machine));
        } catch (WorkspaceException e) {
            return Optional.empty();
        }
    }

    private void refresh() {
        if (!isDisposed()) {
            Machine chosen = table.first() == null ? null : table.first().machine();
            List<Line> lines = lines();
            table.setRows(lines);
            table.markOnly(lines.stream().filter(l -> l.machine() == chosen).toList());
        }
    }

    /** Plans the order on the selected machines. */
    public void plan() {
        List<Machine> machines = table.selection().stream().map(Line::machine).toList();
        if (machines.isEmpty()) {
            Messages.say(getShell(), "order.chooseMachine");
        } else {
            Planning.start(window, order, machines);
        }
    }

    private void open() {
        Line line = table.first();
        if (line != null && line.plan().isPresent()) {
            Editors.open(line.plan().get());
        } else {
            Messages.say(getShell(), "order.noPlan");
        }
    }

    private void export() {
        Exporting.start(window, order);
    }

    /** The table, for tests. */
    public DataTable<Line> table() {
        return table;
    }
}
