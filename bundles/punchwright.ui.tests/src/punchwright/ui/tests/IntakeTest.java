// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.shop.LayerMeaning;
import punchwright.model.shop.LayerRule;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.ui.drawing.ImportWizard;
import punchwright.ui.drawing.IntakeDrawing;
import punchwright.ui.drawing.IntakePart;
import punchwright.ui.editor.Editors;
import punchwright.ui.explorer.ExplorerView;
import punchwright.ui.job.Background;
import punchwright.ui.part.PartEditor;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.LineKind;
import punchwright.ui.sheet.Scene;

/** The wizard from a folder of drawings to parts: good, with many parts, open, and broken. Counts by hand from the drawings. */
class IntakeTest {

    @TempDir
    Path folder;
    @TempDir
    Path customer;
    private Session session;
    private WizardDialog dialog;
    private ImportWizard wizard;

    @BeforeEach
    void open() throws IOException {
        SmallShop.make(folder);
        session = Ui.open(folder);
        Drawings.write(customer.resolve("cover.dxf"), Drawings.plate("0", 0, 0, 120, 80), Drawings.circle("0", 20, 20, 4),
                Drawings.circle("0", 100, 60, 4), Drawings.line("BEND", 0, 40, 120, 40), Drawings.text("0", 5, 90, 5,
                        "DC01 t=1,5 Stk 12"));
        Drawings.write(customer.resolve("nest.dxf"), Drawings.bracket(0, false), Drawings.bracket(100, true),
                Drawings.bracket(200, false),
                Drawings.plate("0", 300, 0, 40, 40));
        Drawings.write(customer.resolve("gap.dxf"), Drawings.open("0", 0, 0, 100, 0, 100, 50, 0, 50));
        Files.createDirectories(customer.resolve("sub"));
        Files.writeString(customer.resolve("sub/letter.dxf"), "Dear Sir or Madam\n");
    }

    @AfterEach
    void close() {
        if (dialog != null && dialog.getShell() != null && !dialog.getShell().isDisposed()) {
            dialog.close();
        }
        Ui.closeAll();
    }

    private void start(Path... from) {
        dialog = ImportWizard.dialog(Ui.window().getShell(), session, List.of(from));
        dialog.setBlockOnOpen(false);
        dialog.create();
        wizard = (ImportWizard) dialog.getCurrentPage().getWizard();
        dialog.open();
        Ui.until("the drawings read", () -> !wizard.intake().drawings().isEmpty() && !wizard.intake().reader().isBusy());
        Ui.settle();
    }

    private IntakeDrawing drawing(String name) {
        return wizard.intake().drawings().stream().filter(d -> d.name().equals(name)).findFirst().orElseThrow();
    }

    private Composite shell() {
        return dialog.getShell();
    }

    private void page(String name) {
        dialog.showPage(wizard.getPage(name));
        Ui.settle();
    }

    private Scene scene() {
        return wizard.previewPage().editor().canvas().scene();
    }

    private void preview(String name) {
        page("preview");
        wizard.previewPage().select(drawing(name));
        Ui.until("the picture of " + name, () -> !scene().parts().isEmpty() || !scene().lines().strokes().isEmpty());
        Ui.settle();
    }

    private static void choose(Combo combo, int index) {
        combo.select(index);
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private TreeSet<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return new TreeSet<>(all.filter(Files::isRegularFile).map(f -> folder.relativize(f).toString().replace('\\', '/'))
                    .toList());
        }
    }

    private void fill() {
        page("parts");
        wizard.partsPage().table().control().selectAll();
        wizard.partsPage().table().control().notifyListeners(SWT.Selection, new Event());
        choose(Ui.field(shell(), "material", Combo.class), 0);
        Ui.field(shell(), "thicknessMm", Combo.class).setText("2");
        Ui.settle();
    }

    @Test
    void eachDrawingIsReadOrRefusedWithAReason() {
        start(customer);
        assertEquals(List.of("cover.dxf", "gap.dxf", "nest.dxf", "letter.dxf"),
                wizard.intake().drawings().stream().map(IntakeDrawing::name).toList());
        assertEquals(IntakeDrawing.State.READ, drawing("cover.dxf").state());
        assertEquals(IntakeDrawing.State.REFUSED, drawing("gap.dxf").state());
        assertEquals(IntakeDrawing.State.REFUSED, drawing("letter.dxf").state());
        assertTrue(drawing("gap.dxf").stateText().contains("50"), drawing("gap.dxf").stateText());
        List<IntakePart> nest = drawing("nest.dxf").parts();
        assertEquals(2, nest.size());
        assertEquals(3, nest.get(0).found().count());
        assertEquals(1, nest.get(0).found().mirrored());
        assertEquals(1, nest.get(1).found().count());
        Ui.picture(dialog.getShell(), "intake-files");
        assertFalse(wizard.canFinish(), "material and thickness are not given");
    }

    @Test
    void findingsInThePictureAndInTheTableAreTiedBothWays() {
        start(customer);
        preview("gap.dxf");
        assertTrue(scene().lines().kinds().contains(LineKind.OPEN));
        assertFalse(scene().marks().isEmpty());
        Scene.Mark mark = scene().marks().get(0);
        wizard.previewPage().editor().findings().select(mark.number());
        Ui.settle();
        assertEquals(mark.number(), wizard.previewPage().editor().canvas().selectedMark());
        int x = wizard.previewPage().editor().canvas().view().px(mark.x());
        int y = wizard.previewPage().editor().canvas().view().py(mark.y());
        assertEquals(wizard.previewPage().editor().canvas().getSize().x / 2, x, 2, "in the middle");
        Ui.picture(dialog.getShell(), "intake-open");
        wizard.previewPage().editor().findings().mark(0);
        Ui.click(wizard.previewPage().editor().canvas(), x, y);
        assertEquals(List.of(mark.number()), wizard.previewPage().editor().findings().selected());
    }

    @Test
    void anotherMeaningOfALayerChangesThePartAndIsKeptForTheShop() throws IOException {
        start(customer);
        preview("cover.dxf");
        assertTrue(scene().lines().kinds().contains(LineKind.BEND_LINE));
        assertEquals(1, scene().lines().notes().size());
        var layers = wizard.previewPage().editor().layers();
        layers.table().select(layers.table().shown().stream().filter(l -> l.layer().equals("BEND")).findFirst().orElseThrow());
        Button keep = (Button) Ui.find(shell(), c -> "keep".equals(c.getData("field"))).get(0);
        keep.setSelection(true);
        Combo meaning = (Combo) Ui.find(shell(), c -> "meaning".equals(c.getData("field"))).get(0);
        choose(meaning, punchwright.engine.drawing.LayerMeaning.MARK.ordinal());
        Ui.until("the bend line as a mark", () -> scene().lines().kinds().contains(LineKind.MARK));
        assertEquals(1, wizard.intake().keptRules().size());
        assertTrue(drawing("cover.dxf").choice().getLayerRules().isEmpty(), "kept for the shop, not for the drawing");
        wizard.intake().remove(wizard.intake().drawings().stream().filter(d -> d != drawing("cover.dxf")).toList());
        fill();
        assertTrue(wizard.performFinish());
        LayerRule first = session.workspace().library().getLayerRules().get(0);
        assertEquals(LayerMeaning.MARK, first.getMeaning());
        assertEquals(List.of("BEND"), first.getLayerPatterns());
        assertTrue(session.workspace().library().getLayerRules().size() > 5, "the usual rules follow");
        assertFalse(session.isDirty(session.workspace().library()));
    }

    @Test
    void theUnitChosenCountsAndSaysTheSize() {
        start(customer.resolve("cover.dxf"));
        preview("cover.dxf");
        Combo unit = Ui.field(shell(), "unit", Combo.class);
        assertTrue(unit.getItem(1).contains("120.0 \u00d7 80.0"), unit.getItem(1));
        choose(unit, 2);
        Ui.until("the size in inches", () -> drawing("cover.dxf").state() == IntakeDrawing.State.READ
                && drawing("cover.dxf").parts().get(0).found().lengthMm() > 3000);
        assertEquals(120 * 25.4, drawing("cover.dxf").parts().get(0).found().lengthMm(), 1e-6);
    }

    @Test
    void notesOfTheDrawingAreOfferedAndNotTaken() {
        start(customer.resolve("cover.dxf"));
        page("parts");
        IntakePart part = drawing("cover.dxf").parts().get(0);
        assertNull(part.material());
        assertEquals(0, part.thicknessMm());
        assertEquals(1, part.quantity());
        String shown = wizard.partsPage().table().tabText(List.of(part));
        assertTrue(shown.contains("1.5 mm") && shown.contains("12 pieces"), shown);
        Button notes = (Button) Ui.find(shell(), c -> c instanceof Button b && b.getText().equals(
                punchwright.ui.text.Texts.of("intake.takeNotes"))).get(0);
        notes.notifyListeners(SWT.Selection, new Event());
        assertEquals(1.5, part.thicknessMm());
        assertEquals(12, part.quantity());
        assertEquals("1.5", Ui.field(shell(), "thicknessMm", Combo.class).getText());
    }

    @Test
    void partsAndOrderAreMadeUndoneAndMadeAgain() throws IOException {
        TreeSet<String> before = files();
        start(customer);
        preview("nest.dxf");
        Ui.picture(dialog.getShell(), "intake-nest");
        fill();
        wizard.partsPage().wantOrder("K-17");
        Ui.picture(dialog.getShell(), "intake-parts");
        assertTrue(wizard.canFinish());
        assertTrue(wizard.performFinish());
        dialog.close();
        Ui.settle();
        TreeSet<String> added = files();
        added.removeAll(before);
        assertEquals(new TreeSet<>(List.of("drawings/cover.dxf", "drawings/nest.dxf", "orders/k-17.pworder", "parts/cover.pwpart",
                "parts/nest-1.pwpart", "parts/nest-2.pwpart")), added);
        Part square = (Part) session.workspace().item("nest-2").orElseThrow();
        assertEquals(2, square.getThicknessMm());
        assertTrue(((DrawnShape) square.getShape()).getPick() != null);
        assertEquals(List.of(1, 3, 1), session.workspace().order("k-17").orElseThrow().getLines().stream()
                .map(l -> l.getQuantity()).toList());
        ExplorerView explorer = (ExplorerView) Ui.page().findView(ExplorerView.ID);
        explorer.made().undo();
        Ui.settle();
        assertEquals(before, files());
        assertTrue(session.workspace().item("nest-2").isEmpty());
        session.made().redo();
        added.addAll(before);
        assertEquals(added, files());
        PartEditor editor = (PartEditor) Editors.open(session.workspace().item("nest-2").orElseThrow()).orElseThrow();
        Ui.until("the picked part's picture", () -> !editor.canvas().scene().parts().isEmpty());
        assertEquals(40, editor.canvas().scene().parts().get(0).box()[2] - editor.canvas().scene().parts().get(0).box()[0], 1e-6);
    }

    @Test
    void whatIsUsedElsewhereIsNotTakenBack() throws IOException {
        start(customer.resolve("cover.dxf"));
        fill();
        assertTrue(wizard.performFinish());
        dialog.close();
        Part cover = (Part) session.workspace().item("cover").orElseThrow();
        session.workspace().orders().get(0).getLines().get(0).setItem(cover);
        Ui.closeWhenOpen(punchwright.ui.text.Texts.of("action.undo"));
        ((ExplorerView) Ui.page().findView(ExplorerView.ID)).made().undo();
        assertTrue(session.workspace().item("cover").isPresent());
    }

    @Test
    void cancelLeavesNothing() throws IOException {
        TreeSet<String> before = files();
        start(customer);
        fill();
        assertTrue(wizard.performCancel());
        dialog.close();
        Ui.settle();
        assertEquals(before, files());
        assertFalse(session.made().canUndo());
    }

    @Test
    void aPartLeftOutIsNotMade() throws IOException {
        start(customer.resolve("nest.dxf"));
        preview("nest.dxf");
        var parts = wizard.previewPage().editor().parts();
        parts.table().select(parts.table().shown().get(0));
        Event space = new Event();
        space.character = ' ';
        parts.table().control().notifyListeners(SWT.KeyDown, space);
        fill();
        assertEquals(1, wizard.partsPage().table().totalCount());
        Ui.field(shell(), "number", Text.class).setText("K-9");
        assertTrue(wizard.performFinish());
        assertTrue(session.workspace().item("k-9").isPresent());
        assertEquals(2, session.workspace().parts().size(), "the shop's own and the new one");
    }

    @Test
    void aThousandDrawingsAreReadWhileTheWindowWorks() throws IOException {
        Path many = Files.createDirectories(customer.resolve("many"));
        for (int i = 0; i < 1000; i++) {
            Drawings.write(many.resolve("part" + i + ".dxf"), Drawings.plate("0", 0, 0, 100 + i, 50), Drawings.circle("0", 20,
                    20, 5));
        }
        dialog = ImportWizard.dialog(Ui.window().getShell(), session, List.of(many));
        dialog.setBlockOnOpen(false);
        dialog.create();
        wizard = (ImportWizard) dialog.getCurrentPage().getWizard();
        dialog.open();
        int[] turns = { 0 };
        Ui.until("a thousand drawings", () -> {
            turns[0]++;
            return wizard.intake().drawings().size() == 1000 && !wizard.intake().reader().isBusy();
        });
        assertTrue(turns[0] > 20, "the window worked " + turns[0] + " times while it was read");
        assertEquals(1000, wizard.intake().takenParts().size());
        wizard.intake().readAgain(wizard.intake().drawings());
        wizard.intake().stop();
        Ui.until("the end of reading", () -> !wizard.intake().reader().isBusy());
        assertTrue(wizard.intake().drawings().stream().anyMatch(d -> d.state() == IntakeDrawing.State.WAITING),
                "stopped before the end");
        Ui.until("the end of the jobs", () -> Job.getJobManager().find(Background.FAMILY).length == 0);
    }
}
