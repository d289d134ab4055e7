// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.engine.drawing.LayerRules;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;
import punchwright.model.work.WorkPackage;
import punchwright.ui.form.ChildList;
import punchwright.ui.form.Fields;
import punchwright.ui.form.ObjectForm;
import punchwright.ui.job.Background;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Kind and dimensions of a part on the left, its picture on the right; the same forms as in the part's editor. */
public final class DimensionsPage extends WizardPage {

    private final Session session;
    private final Part part = WorkFactory.eINSTANCE.createPart();
    private final OpenFile file;
    private SheetCanvas canvas;
    private Label facts;
    private Composite shapePlace;
    private int drawn;
    private String error = "";

    DimensionsPage(Session session) {
        super("dimensions", Texts.of("newPart.page"), null);
        this.session = session;
        setDescription(Texts.of("newPart.message"));
        part.setId("new");
        if (!session.workspace().library().getMaterials().isEmpty()) {
            part.setMaterial(session.workspace().library().getMaterials().get(0));
            part.getMaterial().getThicknessesMm().stream().findFirst().ifPresent(part::setThicknessMm);
        }
        part.setShape(StartShapes.of(StartShapes.KINDS.get(0)));
        file = session.fileOf(part);
    }

    @Override
    public void createControl(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).applyTo(left);
        new Label(left, SWT.NONE).setText(Texts.of("newPart.kind"));
        kinds(left);
        ObjectForm general = new ObjectForm(left, List.of(Fields.group("group.general", WorkPackage.Literals.PART, "number",
                "name",
                "material", "thicknessMm")), "");
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(380, 270).applyTo(general);
        general.setInput(file, part);
        general.onShow(this::complete);
        shapePlace = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(shapePlace);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(shapePlace);
        Composite right = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(right);
        canvas = new SheetCanvas(right, Texts.of("part.picture"));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        facts = new Label(right, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 2).hint(200, 40).applyTo(facts);
        sash.setWeights(48, 52);
        setControl(sash);
        shapeForm();
        general.setFocus();
    }

    private void kinds(Composite parent) {
        Combo kind = new Combo(parent, SWT.READ_ONLY);
        Accessibles.name(kind, Texts.of("newPart.kind"));
        kind.setData("field", "kind");
        StartShapes.KINDS.forEach(k -> kind.add(Texts.of(k)));
        kind.select(0);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(kind);
        kind.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            EClass chosen = StartShapes.KINDS.get(kind.getSelectionIndex());
            if (chosen != part.getShape().eClass()) {
                part.setShape(StartShapes.of(chosen));
                shapeForm();
            }
        }));
    }

    private void shapeForm() {
        for (var old : shapePlace.getChildren()) {
            old.dispose();
        }
        EClass kind = part.getShape().eClass();
        ObjectForm form = new ObjectForm(shapePlace, List.of(Fields.all(kind)), "");
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        if (kind.getEStructuralFeature("holes") instanceof EReference holes) {
            new ChildList(form, holes, "", Fields.columns(holes.getEReferenceType(), "", "shape 80", "sizeMm:2 70", "xMm:2 70",
                    "yMm:2 70",
                    "countX 50", "countY 50"));
        }
        form.setInput(file, part.getShape());
        form.onShow(this::draw);
        shapePlace.layout();
        draw();
    }

    /** Draws the part as it is now, beside the window. */
    private void draw() {
        Part copy = EcoreUtil.copy(part);
        int turn = ++drawn;
        LayerRules rules = session.layerRules();
        Background.start(Texts.of("job.picture", Texts.of(copy.getShape().eClass())), m -> PartPicture.read(copy,
                session.workspace().paths(), rules), picture -> {
                    if (!canvas.isDisposed() && turn == drawn) {
                        show(picture);
                    }
                });
    }

    private void show(PartPicture picture) {
        canvas.setScene(picture.scene());
        error = picture.error();
        facts.setText(error.isEmpty() ? Texts.of("part.facts", picture.openings(), Numbers.fixed(picture.areaMm2() / 100, 1),
                Numbers.fixed(picture.cutLengthMm(), 0)) : error);
        complete();
    }

    private void complete() {
        String lacks = part.getNumber() == null || part.getNumber().isBlank() ? Texts.of("newPart.noNumber")
                : part.getMaterial() == null ? Texts.of("import.noMaterial")
                        : part.getThicknessMm() <= 0 ? Texts.of("import.noThickness", Numbers.plain(part.getThicknessMm()))
                                : null;
        setMessage(lacks);
        setErrorMessage(error.isEmpty() ? null : error);
        setPageComplete(lacks == null && error.isEmpty());
    }

    Part part() {
        return part;
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return canvas;
    }
}
