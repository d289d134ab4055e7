// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import punchwright.model.shop.Material;
import punchwright.model.shop.ShopPackage;
import punchwright.model.work.Part;
import punchwright.model.work.PartShape;
import punchwright.model.work.WorkFactory;
import punchwright.model.work.WorkPackage;
import punchwright.ui.form.Units;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** What a new part needs before it can be drawn: number, name, material, thickness, and without a drawing the kind of shape. */
final class PartDialog extends TitleAreaDialog {

    private final Session session;
    private static final List<EClass> KINDS = List.of(WorkPackage.Literals.PLATE_SHAPE, WorkPackage.Literals.FLANGE_SHAPE,
            WorkPackage.Literals.PERFORATED_PANEL_SHAPE, WorkPackage.Literals.NOTCHED_BRACKET_SHAPE, WorkPackage.Literals.BUSBAR_SHAPE);

    private final Path drawing;
    private Combo kind;
    private final List<Material> materials;
    private Text name;
    private Text number;
    private Combo material;
    private Combo thickness;
    private Part part;

    /** For a drawing, or without one when it is null. */
    PartDialog(Shell parent, Session session, Path drawing) {
        super(parent);
        this.session = session;
        this.drawing = drawing;
        this.materials = session.workspace().library().getMaterials();
        setHelpAvailable(false);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(Texts.of(drawing == null ? "newPart.title" : "import.title"));
        setMessage(drawing == null ? Texts.of("newPart.message") : Texts.of("import.message", drawing.getFileName()));
        Composite body = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(12, 12).applyTo(body);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(body);
        String stem = drawing == null ? "" : drawing.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        number = text(body, WorkPackage.Literals.ITEM__NUMBER, stem);
        name = text(body, ShopPackage.Literals.NAMED__NAME, stem);
        material = combo(body, WorkPackage.Literals.PART__MATERIAL, SWT.READ_ONLY);
        materials.forEach(m -> material.add(m.getName()));
        thickness = combo(body, WorkPackage.Literals.PART__THICKNESS_MM, SWT.NONE);
        if (drawing == null) {
            kind = combo(body, WorkPackage.Literals.PART__SHAPE, SWT.READ_ONLY);
            KINDS.forEach(k -> kind.add(Texts.of(k)));
            kind.select(0);
        }
        material.addListener(SWT.Selection, e -> thicknesses());
        if (!materials.isEmpty()) {
            material.select(0);
            thicknesses();
        }
        return area;
    }

    private static Text text(Composite parent, EStructuralFeature key, String value) {
        label(parent, key);
        Text text = new Text(parent, SWT.BORDER);
        text.setText(value);
        Accessibles.name(text, Texts.of(key));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        return text;
    }

    private static Combo combo(Composite parent, EStructuralFeature key, int style) {
        label(parent, key);
        Combo combo = new Combo(parent, style);
        Accessibles.name(combo, Texts.of(key));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
        return combo;
    }

    private static void label(Composite parent, EStructuralFeature key) {
        new Label(parent, SWT.NONE).setText(Units.header(Texts.of(key), Units.of(key, "")));
    }

    private void thicknesses() {
        Material chosen = materials.get(material.getSelectionIndex());
        thickness.setItems(chosen.getThicknessesMm().stream().map(Numbers::plain).toArray(String[]::new));
        thickness.select(0);
    }

    @Override
    protected void okPressed() {
        OptionalDouble mm = Numbers.parse(thickness.getText());
        if (material.getSelectionIndex() < 0) {
            setErrorMessage(Texts.of("import.noMaterial"));
        } else if (mm.isEmpty() || mm.getAsDouble() <= 0) {
            setErrorMessage(Texts.of("import.noThickness", thickness.getText()));
        } else if (number.getText().isBlank()) {
            setErrorMessage(Texts.of("newPart.noNumber"));
        } else {
            part = WorkFactory.eINSTANCE.createPart();
            part.setId(FreeIds.from(number.getText(), "part", id -> session.workspace().item(id).isPresent()));
            part.setNumber(number.getText().strip());
            part.setName(name.getText().strip());
            part.setMaterial(materials.get(material.getSelectionIndex()));
            part.setThicknessMm(mm.getAsDouble());
            if (kind != null) {
                part.setShape((PartShape) EcoreUtil.create(KINDS.get(kind.getSelectionIndex())));
            }
            super.okPressed();
        }
    }

    /** The part after OK; one with a drawing has no shape yet. */
    Part part() {
        return part;
    }
}
