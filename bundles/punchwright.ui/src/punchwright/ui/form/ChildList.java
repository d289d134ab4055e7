// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import punchwright.ui.table.Accessibles;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/**
 * The list of contained objects below a form: places of a machine, lives of a tool. Enter or a double click opens the line as a
 * small form; Delete removes it.
 */
public final class ChildList {

    private static final int HEIGHT = 170;

    private final ObjectForm form;
    private final EReference list;
    private final String currency;
    private final DataTable<EObject> table;

    /** The list of {@code list} below a form. */
    public ChildList(ObjectForm form, EReference list, String currency, List<Column<EObject>> columns) {
        this.form = form;
        this.list = list;
        this.currency = currency;
        Composite block = form.addBlock(Texts.of(list), HEIGHT);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(block);
        table = new DataTable<>(block, Texts.of(list), columns);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        Composite buttons = new Composite(block, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(buttons);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.TOP).applyTo(buttons);
        button(buttons, Icons.ADD, "list.add", this::add);
        button(buttons, Icons.REMOVE, "list.remove", this::remove);
        table.onOpen(this::open);
        table.control().addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.DEL) {
                remove();
            }
        });
        form.onShow(this::show);
        show();
    }

    private static void button(Composite parent, Icons icon, String key, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setImage(icon.image());
        button.setToolTipText(Texts.of(key));
        Accessibles.name(button, Texts.of(key));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
    }

    @SuppressWarnings("unchecked")
    private List<EObject> children() {
        return form.object() == null ? List.of() : (List<EObject>) form.object().eGet(list);
    }

    private void show() {
        table.setRows(children());
    }

    private void add() {
        if (form.object() == null) {
            return;
        }
        EObject made = EcoreUtil.create(list.getEReferenceType());
        new Edits(form.file()).add(form.object(), list, made);
        show();
        table.select(made);
        open(made);
    }

    private void remove() {
        RemoveRecords.from(form.getShell(), form.file(), table.selection());
    }

    private void open(EObject child) {
        new ChildDialog(form.getShell(), form.file(), child, currency).open();
    }
}
