// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Spinner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.check.LayoutReason;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.planner.layouts.Piece;
import punchwright.ui.editor.Editors;
import punchwright.ui.layout.BenchRow;
import punchwright.ui.layout.LayoutsPage;
import punchwright.ui.order.OrderEditor;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;

/** The layouts of an order in the real workbench, by mouse and keys: 40 plates of 300 x 180 mm on sheets of 2000 x 1000 mm. */
class LayoutsTest {

    private static final int ORDERED = 40;

    @TempDir
    Path folder;
    private Order order;
    private OpenFile file;
    private OrderEditor editor;
    private LayoutsPage page;

    @BeforeEach
    void open() throws IOException {
        SmallShop.make(folder);
        Session session = Ui.open(folder);
        order = session.workspace().orders().get(0);
        file = session.fileOf(order);
        editor = (OrderEditor) Editors.open(order).orElseThrow();
        editor.showLayouts();
        page = editor.layouts();
        Ui.until("webs and margins", () -> page.isReady());
        page.actions().layOut();
        Ui.until("a proposal", () -> !order.getLayouts().isEmpty());
        Ui.settle();
    }

    @AfterEach
    void close() {
        Ui.closeAll();
    }

    private KeptLayout kept() {
        return order.getLayouts().get(0);
    }

    private BenchRow row() {
        return page.tables().layouts().shown().get(0);
    }

    private static int pieces(Order order) {
        return order.getLayouts().stream().mapToInt(l -> l.getRuns() * l.getPlacements().size()).sum();
    }

    private void key(int keyCode, int stateMask) {
        Event event = new Event();
        event.keyCode = keyCode;
        event.stateMask = stateMask;
        page.canvas().notifyListeners(SWT.KeyDown, event);
    }

    private void mouse(int type, double xMm, double yMm) {
        Event event = new Event();
        event.button = 1;
        event.x = page.canvas().view().px(xMm);
        event.y = page.canvas().view().py(yMm);
        page.canvas().notifyListeners(type, event);
    }

    private Bounds box(int index) {
        return page.bench().sheet().box(page.bench().sheet().pieces().get(index));
    }

    private static double middle(double a, double b) {
        return (a + b) / 2;
    }

    /** Takes a piece by its middle and holds it elsewhere. */
    private void dragBy(int index, double dx, double dy) {
        Bounds b = box(index);
        double x = middle(b.minX(), b.maxX()) + 9;
        double y = middle(b.minY(), b.maxY()) + 11;
        mouse(SWT.MouseDown, x, y);
        mouse(SWT.MouseMove, x + dx / 2, y + dy / 2);
        mouse(SWT.MouseMove, x + dx, y + dy);
    }

    private void drop(int index) {
        Bounds b = box(index);
        mouse(SWT.MouseUp, middle(b.minX(), b.maxX()), middle(b.minY(), b.maxY()));
    }

    @Test
    void theProposalIsRightAndOneStepOfUndo() throws IOException {
        assertEquals(ORDERED, pieces(order));
        page.tables().layouts().shown().forEach(r -> assertEquals(List.of(), r.problems()));
        assertEquals(0, page.tables().parts().shown().get(0).missing());
        assertEquals(order.getLayouts().stream().mapToInt(KeptLayout::getRuns).sum(), page.tables().stock().shown().get(0).used());
        double area = 300 * 180 - 18 * Math.PI * 16;
        double use = 100 * area * kept().getPlacements().size() / (2000 * 1000);
        assertEquals(use, 100 * row().figures().utilisation(), 0.01);
        Ui.picture("layouts");
        file.undo();
        assertTrue(order.getLayouts().isEmpty() && page.tables().layouts().shown().isEmpty());
        file.redo();
        assertEquals(ORDERED, pieces(order));
        assertTrue(editor.isDirty());
        Ui.page().saveEditor(editor, false);
        assertTrue(Files.readString(file.path()).contains("<placements"), "kept with the order");
        runsAndWebAreSetAndCheckedAnew();
    }

    private void runsAndWebAreSetAndCheckedAnew() {
        Spinner runs = (Spinner) Ui.find(page, c -> c instanceof Spinner).get(0);
        int before = kept().getRuns();
        runs.setSelection(before + 2);
        runs.notifyListeners(SWT.Selection, new Event());
        assertEquals(before + 2, kept().getRuns());
        assertTrue(page.tables().parts().shown().get(0).made() > ORDERED);
        file.undo();
        assertEquals(before, runs.getSelection());
        Combo web = (Combo) Ui.find(page, c -> c instanceof Combo).get(2);
        web.select(web.getItemCount() - 1);
        web.notifyListeners(SWT.Selection, new Event());
        assertTrue(row().problems().stream().anyMatch(p -> p.reason() == LayoutReason.WEB), row().problems().toString());
        page.actions().addEmpty();
        assertEquals(0, page.bench().sheet().pieces().size());
        assertTrue(page.bench().add("plate"));
        assertEquals(1, page.bench().sheet().pieces().size());
    }

    @Test
    void aDraggedPieceSnapsAndWhatDoesNotFitIsSaidAtOnce() {
        int last = kept().getPlacements().size() - 1;
        Piece before = page.bench().sheet().pieces().get(last);
        Bounds other = box(0);
        dragBy(last, other.minX() + 40 - box(last).minX(), other.minY() + 30 - box(last).minY());
        assertTrue(page.bench().problems().stream().anyMatch(p -> p.reason() == LayoutReason.OVERLAP && p.pieces().contains(1)),
                page.bench().problems().toString());
        assertTrue(page.summary().contains("overlap"), page.summary());
        assertEquals(before.xMm(), kept().getPlacements().get(last).getXMm(), "it still lies in the hand");
        Ui.picture("layouts-drag");
        key(SWT.ESC, 0);
        assertEquals(List.of(), page.bench().problems());
        assertFalse(file.undoLabel().contains("Move"), "nothing was moved");

        dragBy(last, 6, 5);
        drop(last);
        assertEquals(before.xMm(), kept().getPlacements().get(last).getXMm(), 1e-6, "it snaps back beside its neighbour");
        key('r', 0);
        key(SWT.ARROW_RIGHT, SWT.SHIFT);
        key(SWT.ARROW_UP, 0);
        KeptPlacement moved = kept().getPlacements().get(last);
        assertEquals(90, Math.abs(moved.getAngleDeg() - before.angleDeg()) % 180, 1e-9);
        key('l', 0);
        assertTrue(moved.isLocked());
        key(SWT.ARROW_LEFT, 0);
        assertTrue(file.undoLabel().contains("Lock"), "a locked piece does not move: " + file.undoLabel());
        for (int i = 0; i < 4; i++) {
            file.undo();
        }
        assertEquals(before.xMm(), kept().getPlacements().get(last).getXMm(), 1e-6);
        assertEquals(before.angleDeg(), kept().getPlacements().get(last).getAngleDeg());
        assertFalse(kept().getPlacements().get(last).isLocked());
    }

    @Test
    void theRestIsNestedAroundWhatIsLockedAndTheSheetFilledAgain() {
        int count = kept().getPlacements().size();
        page.bench().select(IntStream.range(2, count).boxed().toList());
        key(SWT.DEL, 0);
        assertEquals(2, kept().getPlacements().size());
        assertEquals((count - 2) * kept().getRuns(), page.tables().parts().shown().get(0).missing());
        page.bench().select(List.of(0));
        dragBy(0, 620, 300);
        drop(0);
        key('l', 0);
        KeptPlacement locked = kept().getPlacements().get(0);
        double x = locked.getXMm();
        double y = locked.getYMm();
        page.actions().fill();
        Ui.until("a full sheet", () -> kept().getPlacements().size() > 2);
        Ui.settle();
        assertEquals(List.of(), row().problems());
        page.bench().select(List.of(1));
        key(SWT.ARROW_RIGHT, SWT.SHIFT);
        assertFalse(row().problems().isEmpty(), "it overlaps its neighbour");
        int full = kept().getPlacements().size();
        Ui.picture("layouts-check");
        page.actions().nestAround();
        Ui.until("nested anew", () -> row().problems().isEmpty());
        assertEquals(full, kept().getPlacements().size());
        assertEquals(x, kept().getPlacements().get(0).getXMm());
        assertEquals(y, kept().getPlacements().get(0).getYMm());
        assertTrue(kept().getPlacements().get(0).isLocked());
        Ui.picture("layouts-locked");
        file.undo();
        assertFalse(row().problems().isEmpty());
        file.redo();
        assertTrue(row().problems().isEmpty());
    }
}
