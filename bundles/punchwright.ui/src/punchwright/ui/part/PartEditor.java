// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.List;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.model.shop.Library;
import punchwright.model.work.Assembly;
import punchwright.model.work.Item;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.model.work.PartShape;
import punchwright.model.work.WorkPackage;
import punchwright.ui.drawing.FindingList;
import punchwright.ui.editor.FileEditor;
import punchwright.ui.form.ChildList;
import punchwright.ui.form.FieldGroup;
import punchwright.ui.form.Fields;
import punchwright.ui.form.ObjectForm;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.text.Texts;
import punchwright.ui.tooling.OperationsPage;

/** A part, bought item or assembly: its drawing and its values. */
public final class PartEditor extends FileEditor {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.part";

    private PartView view;
    private ObjectForm shapeForm;
    private OperationsPage operations;
    private ObjectForm form;

    private Item item() {
        return (Item) file().root();
    }

    @Override
    protected void createContent(Composite parent) {
        if (!(item() instanceof Part part)) {
            form = itemForm(parent);
            return;
        }
        TabFolder pages = new TabFolder(parent, SWT.TOP);
        SashForm sash = new SashForm(pages, SWT.HORIZONTAL);
        page(pages, "part.page", sash);
        operations = new OperationsPage(pages, file(), part);
        page(pages, "operations.page", operations);
        view = new PartView(sash, part);
        SashForm right = new SashForm(sash, SWT.VERTICAL);
        form = partForm(right);
        if (part.getShape() != null) {
            shapeForm = shapeForm(right, part);
            shapeForm.onShow(this::draw);
            right.setWeights(55, 45);
        }
        sash.setWeights(55, 45);
        form.onShow(this::draw);
        draw();
    }

    private static void page(TabFolder pages, String key, Control content) {
        TabItem item = new TabItem(pages, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(content);
    }

    /** The page that says which tools make the part; null for what is no part. */
    public OperationsPage operations() {
        return operations;
    }

    /** Brings the operations to the front. */
    public void showOperations() {
        TabFolder pages = (TabFolder) operations.getParent();
        pages.setSelection(1);
    }

    private String currency() {
        return Session.current().map(s -> s.workspace().library()).map(Library::getCurrency).orElse("");
    }

    private ObjectForm partForm(Composite parent) {
        List<FieldGroup> groups = List.of(
                Fields.group("group.general", WorkPackage.Literals.PART, "name", "id", "number", "revision", "state", "material",
                        "thicknessMm", "notes"),
                Fields.group("group.demands", WorkPackage.Literals.PART, "grain", "visibleFace", "burrSide", "mirrorAllowed"));
        ObjectForm made = new ObjectForm(parent, groups, currency());
        list(made, WorkPackage.Literals.PART__FORMS, "kind 110", "xMm:2 70", "yMm:2 70", "lengthMm:2 70", "heightMm:2 70",
                "thread 60");
        list(made, WorkPackage.Literals.PART__SECONDARY, "rate 130", "units:1 70", "minutesPerPiece:1 90");
        made.setInput(file(), item());
        return made;
    }

    private ObjectForm shapeForm(Composite parent, Part part) {
        ObjectForm made = new ObjectForm(parent, List.of(Fields.all(part.getShape().eClass())), currency());
        if (part.getShape().eClass().getEStructuralFeature("holes") instanceof EReference holes) {
            list(made, holes, "shape 80", "sizeMm:2 70", "widthMm:2 70", "xMm:2 70", "yMm:2 70", "countX 50", "countY 50",
                    "pitchXMm:2 70",
                    "pitchYMm:2 70");
        }
        if (part.getShape() instanceof DrawnShape) {
            list(made, WorkPackage.Literals.DRAWN_SHAPE__LAYER_RULES, "layerPatterns 150", "lineTypePatterns 90", "colour 60",
                    "meaning 110");
        }
        made.setInput(file(), part.getShape());
        return made;
    }

    private ObjectForm itemForm(Composite parent) {
        ObjectForm made = new ObjectForm(parent, List.of(Fields.all(item().eClass())), currency());
        if (item() instanceof Assembly) {
            list(made, WorkPackage.Literals.ASSEMBLY__ITEMS, "item 240", "quantity 80");
        }
        made.setInput(file(), item());
        return made;
    }

    private void list(ObjectForm owner, EReference list, String... columns) {
        new ChildList(owner, list, currency(), Fields.columns(list.getEReferenceType(), currency(), columns));
    }

    /** Draws the part as it is now; another shape, as after reading the drawing again, goes into the form as well. */
    private void draw() {
        if (view == null) {
            return;
        }
        PartShape shape = ((Part) item()).getShape();
        if (shapeForm != null && shape != null && shapeForm.object() != shape && shapeForm.object().eClass() == shape.eClass()) {
            shapeForm.setInput(file(), shape);
            return;
        }
        view.draw();
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return view.canvas();
    }

    /** What was noticed in the part's drawing. */
    public FindingList drawingFindings() {
        return view.findings();
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
