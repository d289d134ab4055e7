// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.findings;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.part.ViewPart;

import punchwright.ui.editor.Editors;
import punchwright.ui.plan.PlanEditor;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** Every finding of the workspace: of the files, of the records by the model's rules, and of the plans that were opened. */
public final class FindingsView extends ViewPart {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.findings";
    private static final int WAIT_MS = 400;
    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.NOTE };

    private FindingTable findings;
    private final ToolItem[] shown = new ToolItem[SIGNS.length];
    private Label count;
    private List<FindingRow> all = List.of();
    private final Runnable follower = this::queue;
    private int queued;
    private int scanned;
    private Scan scan;

    @Override
    public void createPartControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(4, 2).spacing(8, 2).applyTo(body);
        Text filter = new Text(body, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Texts.of("filter.hint"));
        Accessibles.name(filter, Texts.of("filter.name"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        ToolBar bar = new ToolBar(body, SWT.FLAT | SWT.RIGHT);
        for (int rank = 0; rank < SIGNS.length; rank++) {
            shown[rank] = new ToolItem(bar, SWT.CHECK);
            shown[rank].setText(Texts.of("severities." + rank));
            shown[rank].setImage(SIGNS[rank].image());
            shown[rank].setSelection(true);
            shown[rank].addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> show()));
        }
        count = new Label(body, SWT.RIGHT);
        GridDataFactory.fillDefaults().hint(330, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(count);
        findings = new FindingTable(body);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(findings.table().control());
        filter.addModifyListener(e -> {
            findings.table().filter(filter.getText());
            count();
        });
        findings.table().onOpen(FindingsView::goTo);
        Session.addListener(follower);
        queue();
    }

    /** Looks again when the hand rests: a rule never runs between two key strokes. */
    private void queue() {
        int turn = ++queued;
        if (scan != null) {
            scan.stop();
        }
        getSite().getShell().getDisplay().timerExec(WAIT_MS, () -> {
            if (turn == queued && !findings.table().control().isDisposed()) {
                scan();
            }
        });
    }

    private void scan() {
        if (Session.current().isEmpty()) {
            take(List.of());
            return;
        }
        scan = new Scan(Session.current().get(), this::take);
        scan.start();
    }

    private void take(List<FindingRow> rows) {
        if (!findings.table().control().isDisposed()) {
            all = List.copyOf(rows);
            scanned = queued;
            show();
        }
    }

    private void show() {
        findings.table().setRows(all.stream().filter(row -> shown[row.rank()].getSelection()).toList());
        count();
    }

    private void count() {
        long errors = all.stream().filter(r -> r.rank() == 0).count();
        long warnings = all.stream().filter(r -> r.rank() == 1).count();
        count.setText(Texts.of("findings.count", errors, warnings, all.size() - errors - warnings));
    }

    private static void goTo(FindingRow row) {
        if (row.target() == null || row.target().eResource() == null) {
            return;
        }
        Editors.open(row.target()).ifPresent(editor -> {
            if (editor instanceof PlanEditor plan && row.located()) {
                plan.canvas().goTo(row.x(), row.y());
            } else if (!row.feature().isEmpty()) {
                editor.focus(row.feature());
            }
        });
    }

    /** Whether the last scan is done. */
    public boolean isScanned() {
        return scanned == queued && queued > 0;
    }

    /** The rows shown, for tests. */
    public FindingTable findings() {
        return findings;
    }

    @Override
    public void setFocus() {
        findings.table().control().setFocus();
    }

    @Override
    public void dispose() {
        Session.removeListener(follower);
        super.dispose();
    }
}
