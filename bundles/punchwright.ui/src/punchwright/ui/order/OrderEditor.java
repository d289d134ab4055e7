// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.order;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.model.shop.Library;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.WorkPackage;
import punchwright.ui.editor.FileEditor;
import punchwright.ui.form.ChildList;
import punchwright.ui.form.Fields;
import punchwright.ui.form.ObjectForm;
import punchwright.ui.layout.LayoutsPage;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** An order: what is wanted, and which machine makes it in what time at what cost. */
public final class OrderEditor extends FileEditor {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.order";

    private ObjectForm form;
    private MachineChoice choice;
    private LayoutsPage layouts;
    private TabFolder pages;

    @Override
    protected void createContent(Composite parent) {
        pages = new TabFolder(parent, SWT.TOP);
        SashForm sash = new SashForm(pages, SWT.VERTICAL);
        page("order.page", sash);
        String currency = Session.current().map(s -> s.workspace().library()).map(Library::getCurrency).orElse("");
        SashForm above = new SashForm(sash, SWT.HORIZONTAL);
        form = new ObjectForm(above,
                List.of(Fields.group("group.general", WorkPackage.Literals.ORDER, "name", "id", "number", "customer",
                "received", "dueDate", "state", "notes")), currency);
        EReference lines = WorkPackage.Literals.ORDER__LINES;
        ObjectForm wanted = new ObjectForm(above, List.of(), currency);
        new ChildList(wanted, lines, currency,
                Fields.columns(lines.getEReferenceType(), currency, "item 220", "quantity 80", "want 70", "lots 100", "dueDate 90"));
        form.setInput(file(), file().root());
        wanted.setInput(file(), file().root());
        above.setWeights(45, 55);
        choice = new MachineChoice(sash, (Order) file().root(), getSite().getWorkbenchWindow());
        sash.setWeights(55, 45);
        layouts = new LayoutsPage(pages, file(), (Order) file().root());
        page("layouts.page", layouts);
    }

    private void page(String key, Control content) {
        TabItem item = new TabItem(pages, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(content);
    }

    /** The page of the layouts. */
    public LayoutsPage layouts() {
        return layouts;
    }

    /** Brings the layouts to the front. */
    public void showLayouts() {
        pages.setSelection(1);
    }

    /** The machines this order can be planned on. */
    public MachineChoice choice() {
        return choice;
    }

    @Override
    public void reveal(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof KeptLayout kept) {
                showLayouts();
                layouts.reveal(kept, object instanceof KeptPlacement piece ? kept.getPlacements().indexOf(piece) : -1);
                return;
            }
        }
        pages.setSelection(0);
        super.reveal(object);
    }

    @Override
    public void focus(String featureName) {
        form.focus(featureName);
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
