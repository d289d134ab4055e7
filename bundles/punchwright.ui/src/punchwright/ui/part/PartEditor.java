// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.engine.drawing.LayerRules;
import punchwright.model.shop.Library;
import punchwright.model.work.Assembly;
import punchwright.model.work.Item;
import punchwright.model.work.Part;
import punchwright.model.work.WorkPackage;
import punchwright.ui.editor.FileEditor;
import punchwright.ui.form.ChildList;
import punchwright.ui.form.FieldGroup;
import punchwright.ui.form.Fields;
import punchwright.ui.form.ObjectForm;
import punchwright.ui.job.Background;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.Scene;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.tooling.OperationsPage;

/** A part, bought item or assembly: its drawing and its values. */
public final class PartEditor extends FileEditor {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.part";

    private SheetCanvas canvas;
    private OperationsPage operations;
    private Label status;
    private ObjectForm form;
    private int drawn;

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
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        canvas = new SheetCanvas(left, Texts.of("part.picture"));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        status = new Label(left, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 2).hint(200, 40).applyTo(status);
        SashForm right = new SashForm(sash, SWT.VERTICAL);
        form = partForm(right);
        if (part.getShape() != null) {
            ObjectForm shape = shapeForm(right, part);
            shape.onShow(this::draw);
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
        list(made, WorkPackage.Literals.PART__FORMS, "kind 110", "xMm:2 70", "yMm:2 70", "lengthMm:2 70", "heightMm:2 70", "thread 60");
        list(made, WorkPackage.Literals.PART__SECONDARY, "rate 130", "units:1 70", "minutesPerPiece:1 90");
        made.setInput(file(), item());
        return made;
    }

    private ObjectForm shapeForm(Composite parent, Part part) {
        ObjectForm made = new ObjectForm(parent, List.of(Fields.all(part.getShape().eClass())), currency());
        if (part.getShape().eClass().getEStructuralFeature("holes") instanceof EReference holes) {
            list(made, holes, "shape 80", "sizeMm:2 70", "widthMm:2 70", "xMm:2 70", "yMm:2 70", "countX 50", "countY 50", "pitchXMm:2 70",
                    "pitchYMm:2 70");
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

    /** Draws the part as it is now; the reading is done beside the window, on a copy. */
    private void draw() {
        if (canvas == null) {
            return;
        }
        Part copy = EcoreUtil.copy((Part) item());
        int turn = ++drawn;
        Session session = Session.current().orElseThrow();
        LayerRules rules = session.layerRules();
        Background.start(Texts.of("job.picture", copy.getName()), monitor -> PartPicture.read(copy, session.workspace().paths(), rules),
                picture -> show(picture, turn));
    }

    private void show(PartPicture picture, int turn) {
        if (canvas.isDisposed() || turn != drawn) {
            return;
        }
        List<Scene.Piece> pieces = new ArrayList<>();
        if (!picture.contours().isEmpty()) {
            pieces.add(Scene.Piece.of(1, item().getName(), picture.contours()));
        }
        canvas.setScene(new Scene(0, 0, pieces, List.of(), List.of(), List.of(), List.of()));
        status.setText(picture.error().isEmpty() ? Texts.of("part.facts", picture.contours().size() - 1,
                Numbers.fixed(picture.areaMm2() / 100, 1), Numbers.fixed(picture.cutLengthMm(), 0)) : picture.error());
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return canvas;
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
