// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.work.DrawingUnit;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;
import punchwright.ui.drawing.IntakeDrawing;
import punchwright.ui.drawing.ReadAgainDialog;
import punchwright.ui.editor.Editors;
import punchwright.ui.part.NewPartWizard;
import punchwright.ui.part.PartEditor;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.SheetCanvas;

/** Parts from dimensions with a picture that follows, and drawings of parts that are read again. Sizes by hand. */
class NewPartTest {

    @TempDir
    Path folder;
    private Session session;

    @BeforeEach
    void open() throws IOException {
        SmallShop.make(folder);
        session = Ui.open(folder);
    }

    @AfterEach
    void close() {
        Ui.closeAll();
    }

    private static void type(Text field, String text) {
        field.setText(text);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Ui.settle();
    }

    private static double length(SheetCanvas canvas) {
        double[] box = canvas.scene().box();
        return box[2] - box[0];
    }

    @Test
    void thePictureFollowsTheDimensionsOfEveryKind() {
        WizardDialog dialog = NewPartWizard.dialog(Ui.window().getShell(), session);
        dialog.setBlockOnOpen(false);
        dialog.create();
        NewPartWizard wizard = (NewPartWizard) dialog.getCurrentPage().getWizard();
        dialog.open();
        try {
            SheetCanvas canvas = wizard.page().canvas();
            Ui.until("the first picture", () -> length(canvas) > 0);
            type(Ui.field(dialog.getShell(), "lengthMm", Text.class), "350");
            Ui.until("the picture 350 mm long", () -> Math.abs(length(canvas) - 350) < 1e-6);
            assertFalse(wizard.canFinish(), "no number yet");
            Combo kind = Ui.field(dialog.getShell(), "kind", Combo.class);
            for (int i = 1; i < kind.getItemCount(); i++) {
                kind.select(i);
                kind.notifyListeners(SWT.Selection, new Event());
                Ui.settle();
                Ui.until("picture of " + kind.getItem(i), () -> length(canvas) > 0 && !canvas.scene().parts().isEmpty());
                Ui.picture(dialog.getShell(), "new-part-" + i);
            }
            type(Ui.field(dialog.getShell(), "number", Text.class), "BB-1");
            Ui.until("everything said", wizard::canFinish);
            assertTrue(wizard.performFinish());
            assertEquals("bb-1", wizard.part().getId());
        } finally {
            dialog.close();
        }
    }

    @Test
    void aRackPanelHasTheSizeOfItsUnits() {
        WizardDialog dialog = NewPartWizard.dialog(Ui.window().getShell(), session);
        dialog.setBlockOnOpen(false);
        dialog.create();
        NewPartWizard wizard = (NewPartWizard) dialog.getCurrentPage().getWizard();
        dialog.open();
        try {
            Combo kind = Ui.field(dialog.getShell(), "kind", Combo.class);
            kind.select(4);
            kind.notifyListeners(SWT.Selection, new Event());
            type(Ui.field(dialog.getShell(), "heightUnits", Text.class), "3");
            // IEC 60297 and EIA-310, from memory: 482.6 mm wide, units of 44.45 mm less 0.8 mm
            Ui.until("three units", () -> Math.abs(wizard.page().canvas().scene().box()[3] - (3 * 44.45 - 0.8)) < 1e-6);
            assertEquals(482.6, length(wizard.page().canvas()), 1e-6);
        } finally {
            dialog.close();
        }
    }

    private Part drawn(String file) throws IOException {
        Part part = WorkFactory.eINSTANCE.createPart();
        part.setId("drawn");
        part.setNumber("D-1");
        part.setName("Drawn");
        part.setMaterial(session.workspace().library().getMaterials().get(0));
        part.setThicknessMm(2);
        DrawnShape shape = WorkFactory.eINSTANCE.createDrawnShape();
        shape.setDrawing("drawings/" + file);
        part.setShape(shape);
        session.workspace().put(part);
        session.workspace().save(part);
        return part;
    }

    @Test
    void aDrawingIsReadAgainInInchesAndUndone() throws IOException {
        Files.createDirectories(folder.resolve("drawings"));
        Drawings.write(folder.resolve("drawings/p.dxf"), Drawings.plate("0", 0, 0, 10, 5), Drawings.text("0", 1, 1, 1, "HELLO"),
                Drawings.open("0", 2, 2, 3, 3));
        Part part = drawn("p.dxf");
        PartEditor editor = (PartEditor) Editors.open(part).orElseThrow();
        Ui.until("the picture", () -> !editor.canvas().scene().parts().isEmpty());
        assertEquals("HELLO", editor.canvas().scene().lines().notes().get(0).text());
        assertFalse(editor.canvas().scene().marks().isEmpty(), "the open line is marked");
        Ui.picture("part-drawing");
        ReadAgainDialog dialog = new ReadAgainDialog(Ui.window().getShell(), session, part, folder.resolve("drawings/p.dxf"));
        dialog.setBlockOnOpen(false);
        dialog.open();
        Ui.until("the drawing", () -> dialog.drawing().state() == IntakeDrawing.State.READ);
        Ui.settle();
        Combo unit = Ui.field(dialog.getShell(), "unit", Combo.class);
        unit.select(2);
        unit.notifyListeners(SWT.Selection, new Event());
        Ui.until("the drawing in inches", () -> dialog.drawing().state() == IntakeDrawing.State.READ);
        Ui.settle();
        Ui.picture(dialog.getShell(), "read-again");
        dialog.accept();
        assertEquals(DrawingUnit.INCH, ((DrawnShape) part.getShape()).getUnit());
        Ui.until("the picture in inches", () -> Math.abs(editor.canvas().scene().parts().get(0).box()[2] - 254) < 1e-6);
        assertTrue(editor.isDirty());
        session.fileOf(part).undo();
        assertEquals(DrawingUnit.FROM_FILE, ((DrawnShape) part.getShape()).getUnit());
        Ui.until("the picture in mm again", () -> Math.abs(editor.canvas().scene().parts().get(0).box()[2] - 10) < 1e-6);
    }

    @Test
    void aDrawingWithSeveralPartsShowsAllOfItUntilOneIsPicked() throws IOException {
        Files.createDirectories(folder.resolve("drawings"));
        Drawings.write(folder.resolve("drawings/two.dxf"), Drawings.plate("0", 0, 0, 10, 5), Drawings.plate("0", 50, 0, 20, 20));
        Part part = drawn("two.dxf");
        PartEditor editor = (PartEditor) Editors.open(part).orElseThrow();
        Ui.until("both parts", () -> editor.canvas().scene().parts().size() == 2);
        ReadAgainDialog dialog = new ReadAgainDialog(Ui.window().getShell(), session, part, folder.resolve("drawings/two.dxf"));
        dialog.setBlockOnOpen(false);
        dialog.open();
        Ui.until("the drawing", () -> dialog.editor().parts().table().totalCount() == 2);
        Ui.settle();
        var second = dialog.editor().parts().table().shown().stream().filter(p -> p.found().lengthMm() > 15).findFirst()
                .orElseThrow();
        dialog.editor().parts().table().select(second);
        dialog.accept();
        Ui.until("the picked part", () -> editor.canvas().scene().parts().size() == 1);
        assertEquals(List.of(50.0, 70.0), List.of(editor.canvas().scene().parts().get(0).box()[0], editor.canvas().scene()
                .parts().get(0).box()[2]));
    }
}
