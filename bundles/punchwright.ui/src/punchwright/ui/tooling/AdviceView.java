// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import punchwright.engine.advice.Addition;
import punchwright.engine.advice.Advice;
import punchwright.engine.advice.Recommendation;
import punchwright.engine.finding.Finding;
import punchwright.model.shop.Library;
import punchwright.ui.editor.Editors;
import punchwright.ui.job.OpenWorkspace;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** Which tool, holder or machine option to buy: a ranking with what each saves, costs, and makes possible. */
public final class AdviceView extends ViewPart {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.advice";

    private final AdviceRun run = new AdviceRun();
    private final Runnable follower = this::sessionChanged;
    private Text perYear;
    private Button work;
    private Button cancel;
    private Button draft;
    private Label status;
    private TabFolder rankings;
    private DataTable<Recommendation> ranking;
    private DataTable<Recommendation> enabling;
    private AdviceDetails details;
    private Session shown;

    @Override
    public void createPartControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar(body));
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        rankings = new TabFolder(sash, SWT.TOP);
        ranking = new DataTable<>(rankings, Texts.of("advice.ranking"), AdviceColumns.ranking(OpenShop.currency()));
        enabling = new DataTable<>(rankings, Texts.of("advice.enabling"), AdviceColumns.ranking(OpenShop.currency()));
        tab(rankings, "advice.saves", ranking.control());
        tab(rankings, "advice.enables", enabling.control());
        details = new AdviceDetails(sash, OpenShop.currency());
        sash.setWeights(56, 44);
        for (DataTable<Recommendation> table : List.of(ranking, enabling)) {
            table.onSelect(this::selected);
            table.onOpen(r -> addDraft());
        }
        rankings.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> selected(current().first())));
        Session.addListener(follower);
        shown = Session.current().orElse(null);
        selected(null);
    }

    private Composite bar(Composite parent) {
        Composite bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(6).margins(6, 3).spacing(8, 3).applyTo(bar);
        new Label(bar, SWT.NONE).setText(Texts.of("advice.perYear"));
        perYear = new Text(bar, SWT.BORDER | SWT.RIGHT);
        perYear.setMessage(Texts.of("advice.byDates"));
        perYear.setToolTipText(Texts.of("advice.perYear.help"));
        Accessibles.name(perYear, Texts.of("advice.perYear"));
        GridDataFactory.fillDefaults().hint(90, SWT.DEFAULT).applyTo(perYear);
        perYear.addListener(SWT.DefaultSelection, e -> work());
        work = button(bar, "advice.work", this::work);
        cancel = button(bar, "advice.cancel", this::stop);
        draft = button(bar, "advice.draft", this::addDraft);
        draft.setImage(Icons.ADD.image());
        cancel.setEnabled(false);
        status = new Label(bar, SWT.NONE);
        status.setText(Texts.of("advice.hint"));
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(status);
        return bar;
    }

    private static Button button(Composite parent, String key, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Texts.of(key));
        button.setToolTipText(Texts.of(key + ".help"));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        return button;
    }

    /** A tab with its text and what it shows. */
    static void tab(TabFolder folder, String key, Control control) {
        TabItem item = new TabItem(folder, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(control);
    }

    /** Another workspace: what was advised is no longer about what is open. */
    private void sessionChanged() {
        Session now = Session.current().orElse(null);
        if (now != shown && !status.isDisposed()) {
            shown = now;
            stop();
            show(null, List.of());
            status.setText(Texts.of("advice.hint"));
        }
    }

    /** Works the advice out beside the window. */
    public void work() {
        Session session = Session.current().orElse(null);
        if (session == null) {
            status.setText(Texts.of("command.needsWorkspace"));
            return;
        }
        OptionalDouble times = perYear.getText().isBlank() ? OptionalDouble.of(0) : Numbers.parse(perYear.getText());
        if (times.isEmpty() || times.getAsDouble() < 0) {
            status.setText(Texts.of("field.notAFigure", perYear.getText()));
            perYear.setFocus();
            return;
        }
        if (!OpenWorkspace.saved(getSite().getWorkbenchWindow(), session)) {
            return;
        }
        working(true);
        status.setText(Texts.of("advice.working"));
        run.start(session.folder(), times.getAsDouble(), this::step, result -> {
            if (!status.isDisposed()) {
                working(false);
                show(result.advice(), result.input());
            }
        }, () -> {
            if (!status.isDisposed()) {
                working(false);
            }
        });
    }

    private void step(double share) {
        if (!status.isDisposed()) {
            status.setText(Texts.of("advice.step", Numbers.fixed(100 * share, 0)));
        }
    }

    /** Stops what is being worked out; what was shown stays. */
    public void stop() {
        if (run.stop()) {
            status.setText(Texts.of("advice.stopped"));
        }
        working(false);
    }

    private void working(boolean now) {
        work.setEnabled(!now);
        cancel.setEnabled(now);
    }

    /** Shows an advice with what was noticed in its input; null shows none. */
    public void show(Advice advice, List<Finding> input) {
        ranking.setRows(advice == null ? List.of() : advice.ranking());
        enabling.setRows(advice == null ? List.of() : advice.enabling());
        details.show(advice, input);
        if (advice != null) {
            status.setText(Texts.of("advice.done", Numbers.fixed(advice.perYear(), 0), OpenShop.currency(), advice.additions(),
                    advice.workedOut(), advice.choices()));
            ranking.markOnly(advice.ranking().stream().limit(1).toList());
            enabling.markOnly(advice.enabling().stream().limit(1).toList());
        }
        selected(current().first());
    }

    private void selected(Recommendation r) {
        details.select(r);
        draft.setEnabled(r != null && AdviceDrafts.isRecord(r.addition()));
    }

    /** Adds the selected addition to the library as a draft and goes to it. */
    public void addDraft() {
        Recommendation r = current().first();
        Session session = Session.current().orElse(null);
        if (r == null || session == null) {
            return;
        }
        Library library = session.workspace().library();
        Addition addition = r.addition();
        EObject record = AdviceDrafts.add(session.fileOf(library), library, addition);
        if (record == null) {
            status.setText(Texts.of("advice.noRecord", addition.name()));
        } else {
            status.setText(Texts.of("advice.added", addition.name()));
            Editors.open(record);
        }
    }

    /** The ranking in front. */
    private DataTable<Recommendation> current() {
        return rankings.getSelectionIndex() == 1 ? enabling : ranking;
    }

    /** The ranking by what is saved. */
    public DataTable<Recommendation> ranking() {
        return ranking;
    }

    /** The line above. */
    public String statusText() {
        return status.getText();
    }

    @Override
    public void dispose() {
        Session.removeListener(follower);
        run.stop();
        super.dispose();
    }

    @Override
    public void setFocus() {
        current().control().setFocus();
    }
}
