// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.order;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.ui.job.Background;
import punchwright.ui.job.Exporting;
import punchwright.ui.job.Messages;
import punchwright.ui.job.Planning;
import punchwright.ui.job.PlanNames;
import punchwright.ui.job.PlanSummary;
import punchwright.ui.job.Plans;
import punchwright.ui.session.Session;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/**
 * The machines in use, each with its plan for the order when there is one: state, sheets, time, cost. Here is planned and
 * exported.
 */
public final class MachineChoice extends Composite {

    private static final double SECONDS_PER_MINUTE = 60;

    private final Order order;
    private final IWorkbenchWindow window;
    private final DataTable<Line> table;
    private final Runnable follower = this::refresh;
    private int refreshed;

    /**
     * A machine and what it was planned to do.
     *
     * @param machine the machine
     * @param plan    what its plan for the order says; empty when there is none yet
     */
    public record Line(Machine machine, Optional<PlanSummary> plan) {

        private Double of(ToDoubleFunction<PlanSummary> figure) {
            return plan.map(figure::applyAsDouble).orElse(null);
        }

        private Integer count(ToIntFunction<PlanSummary> figure) {
            return plan.map(figure::applyAsInt).orElse(null);
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
        show(machines(), machines().stream().map(m -> Optional.<PlanSummary>empty()).toList());
        refresh();
    }

    private static List<Column<Line>> columns(String currency) {
        return List.of(Column.text("col.machine", 200, l -> l.machine().getName()),
                Column.text("col.state", 110, l -> l.plan().map(p -> Texts.of(p.status())).orElse(Texts.of("order.notPlanned"))),
                Column.count("col.sheets", 70, l -> l.count(PlanSummary::sheets)),
                Column.number("col.minutes", 90, 1, l -> l.of(p -> p.timeS() / SECONDS_PER_MINUTE)),
                new Column<>(Texts.of("col.cost", currency), 110, SWT.RIGHT, l -> l.plan().map(p -> Numbers.fixed(p.cost(), 2))
                .orElse(""), l -> l.of(PlanSummary::cost)),
                Column.count("col.errors", 70, l -> l.count(PlanSummary::errors)),
                Column.count("col.warnings", 90, l -> l.count(PlanSummary::warnings)),
                Column.text("col.whyNot", 420, l -> l.plan().map(PlanSummary::firstError).orElse("")));
    }

    private static void button(Composite parent, Icons icon, String key, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Texts.of(key));
        button.setImage(icon.image());
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        GridDataFactory.fillDefaults().applyTo(button);
    }

    /** Machines in use with nothing known of their plans yet. */
    private List<Machine> machines() {
        return Session.current().map(s -> s.workspace().library().getMachines().stream()
                .filter(m -> m.getStatus() == ItemStatus.IN_USE).toList()).orElse(List.of());
    }

    /** Skims the plans beside the window and shows what they say. */
    private void refresh() {
        if (isDisposed() || Session.current().isEmpty()) {
            return;
        }
        Path folder = Session.current().get().folder().resolve(WorkspacePaths.PLANS);
        List<Machine> machines = machines();
        List<Path> files = machines.stream().map(m -> folder.resolve(PlanNames.id(order, m) + ".pwplan")).toList();
        int turn = ++refreshed;
        Background.start(Texts.of("job.skim", order.getNumber()), monitor -> files.stream().map(PlanSummary::read).toList(),
                summaries -> {
            if (!isDisposed() && turn == refreshed) {
                show(machines, summaries);
            }
        });
    }

    private void show(List<Machine> machines, List<Optional<PlanSummary>> summaries) {
        List<Line> lines = new ArrayList<>();
        for (int k = 0; k < machines.size(); k++) {
            lines.add(new Line(machines.get(k), summaries.get(k)));
        }
        List<Machine> chosen = table.selection().stream().map(Line::machine).toList();
        table.setRows(lines);
        List<Line> marked = lines.stream().filter(l -> chosen.contains(l.machine())).toList();
        table.markOnly(marked.isEmpty() && !lines.isEmpty() ? lines.subList(0, 1) : marked);
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
            Plans.open(PlanNames.id(order, line.machine()));
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
