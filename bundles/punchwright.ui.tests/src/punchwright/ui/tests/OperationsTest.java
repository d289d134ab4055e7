// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.shop.Tool;
import punchwright.model.work.Part;
import punchwright.ui.editor.Editors;
import punchwright.ui.part.PartEditor;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.tooling.FeatureLine;
import punchwright.ui.tooling.LoadingPage;
import punchwright.ui.tooling.OperationsPage;
import punchwright.ui.tooling.PassedOver;
import punchwright.ui.tooling.Way;

/** The operations of a part in the real workbench: what is chosen, what a wish changes, and back again. */
class OperationsTest {

    @TempDir
    Path folder;
    private Session session;
    private Part part;
    private OpenFile file;
    private OperationsPage page;
    private PartEditor editor;

    @BeforeEach
    void open() throws IOException {
        SmallShop.make(folder);
        session = Ui.open(folder);
        part = (Part) session.workspace().parts().get(0);
        file = session.fileOf(part);
        editor = (PartEditor) Editors.open(part).orElseThrow();
        page = editor.operations();
        editor.showOperations();
        Ui.until("the choice", () -> page.lines().shownCount() > 0);
        Ui.settle();
    }

    @AfterEach
    void close() {
        Ui.closeAll();
    }

    private Tool tool(String id) {
        return session.workspace().library().getTools().stream().filter(t -> t.getId().equals(id)).findFirst().orElseThrow();
    }

    private FeatureLine holes() {
        return page.lines().shown().stream().filter(l -> l.features().size() == 18).findFirst().orElseThrow();
    }

    private void again(Runnable what) {
        int before = page.weighed();
        what.run();
        Ui.until("the choice again", () -> page.weighed() > before);
        Ui.settle();
    }

    private static void key(Table table, char key) {
        Event event = new Event();
        event.character = key;
        event.keyCode = key;
        table.notifyListeners(SWT.KeyDown, event);
    }

    @Test
    void likeHolesShareALineAndAreEmphasised() {
        assertEquals("Round 8", holes().tools());
        assertEquals(18, holes().hits());
        page.lines().select(holes());
        assertEquals(18, page.canvas().emphasis().size());
        assertFalse(page.ways().shown().isEmpty());
        assertEquals(1, page.ways().shown().stream().filter(w -> w.way().chosen()).count());
        Ui.picture("operations");
    }

    @Test
    void aClickInThePictureSelectsTheLine() {
        FeatureLine edge = page.lines().shown().stream().filter(l -> !l.features().get(0).isOpening()).findFirst().orElseThrow();
        page.lines().select(edge);
        double x = holes().features().get(4).center().x();
        double y = holes().features().get(4).center().y();
        Ui.click(page.canvas(), page.canvas().view().px(x), page.canvas().view().py(y));
        assertEquals(holes(), page.lines().first());
        assertEquals(18, page.canvas().emphasis().size());
    }

    @Test
    void everyToolOwnedIsChosenOrPassedOverWithAReason() {
        page.lines().select(holes());
        int owned = session.workspace().library().getTools().size();
        assertEquals(owned - 1, page.passed().totalCount());
        for (PassedOver over : page.passed().shown()) {
            assertFalse(over.reason().isBlank(), over.toString());
            assertTrue(over.code().startsWith("TOOLING-"), over.code());
        }
    }

    @Test
    void aForbiddenToolGivesAnotherChoiceItsReasonAndTheDifference() {
        page.lines().select(holes());
        String before = page.summary();
        again(() -> key(page.lines().control(), 'f'));
        assertEquals(1, part.getWishes().size());
        assertNotEquals("Round 8", holes().tools());
        assertEquals("Round 8", holes().before());
        assertTrue(holes().money() > holes().moneyFree(), "a dearer way");
        assertNotEquals(before, page.summary());
        page.lines().select(holes());
        PassedOver over = page.passed().shown().stream().filter(p -> p.tool().equals("Round 8")).findFirst().orElseThrow();
        assertEquals("TOOLING-FORBIDDEN", over.code());
        Ui.picture("operations-forbidden");
        again(file::undo);
        assertTrue(part.getWishes().isEmpty());
        assertEquals("Round 8", holes().tools());
        assertEquals(before, page.summary());
        again(file::redo);
        assertNotEquals("Round 8", holes().tools());
    }

    @Test
    void aPinnedAlternativeIsChosenKeptAndTakenBack() throws IOException {
        page.lines().select(holes());
        Way other = page.ways().shown().stream().filter(w -> !w.way().chosen() && w.way().tools().size() == 1).findFirst()
                .orElseThrow();
        String name = other.tools();
        page.ways().control().notifyListeners(SWT.FocusIn, new Event());
        page.ways().select(other);
        page.ways().control().notifyListeners(SWT.Selection, new Event());
        again(() -> key(page.ways().control(), 'p'));
        assertEquals(name, holes().tools());
        assertEquals(name, holes().pinned());
        assertEquals(18, part.getWishes().size(), "one for each hole");
        assertTrue(editor.isDirty());
        Ui.page().saveEditor(editor, false);
        assertTrue(Files.readString(file.path()).contains("wishes"), "wishes are kept with the part");
        page.lines().select(holes());
        again(() -> assertTrue(page.release()));
        assertEquals("Round 8", holes().tools());
    }

    @Test
    void loadingShowsEveryToolOfTheChoiceOnce() {
        long tools = page.lines().shown().stream().flatMap(l -> l.chosen().tools().stream()).map(t -> t.id()).distinct().count();
        assertEquals(tools, page.loading().table().shown().stream().map(l -> l.tool().tool()).distinct().count());
        for (LoadingPage.Line line : page.loading().table().shown()) {
            assertTrue(line.tool().forceKn() > 0 && line.tool().percent() < 100, line.toString());
        }
        assertTrue(page.loading().table().tabText(page.loading().table().shown()).contains(tool("r8").getName()));
    }

    @Test
    void aPartThatNoToolMakesSaysSo() {
        again(() -> page.forbid(tool("r8")));
        for (String id : new String[] { "r4", "r5", "r6" }) {
            again(() -> page.forbid(tool(id)));
        }
        FeatureLine line = page.lines().shown().stream().filter(l -> l.features().get(0).isOpening()).findFirst().orElseThrow();
        assertEquals(null, line.chosen());
        assertTrue(page.summary().contains("18"), page.summary());
        Ui.picture("operations-cannot");
    }
}
