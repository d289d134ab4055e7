// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IEditorReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanStatus;
import punchwright.model.shop.Tool;
import punchwright.model.work.Order;
import punchwright.ui.editor.Editors;
import punchwright.ui.explorer.ExplorerView;
import punchwright.ui.findings.FindingsView;
import punchwright.ui.form.Edits;
import punchwright.ui.form.Uses;
import punchwright.ui.job.Background;
import punchwright.ui.job.Exporting;
import punchwright.ui.job.Planning;
import punchwright.ui.library.LibraryEditor;
import punchwright.ui.library.ShopKind;
import punchwright.ui.part.PartEditor;
import punchwright.ui.plan.PlanEditor;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** The main job in the real workbench: keep the library, plan an order, look at the plan. */
class MainJobTest {

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

    private Tool tool(String id) {
        return session.workspace().library().getTools().stream().filter(t -> t.getId().equals(id)).findFirst().orElseThrow();
    }

    private LibraryEditor library(Tool tool) {
        LibraryEditor editor = (LibraryEditor) Editors.open(tool).orElseThrow();
        Ui.settle();
        return editor;
    }

    private static void type(Text field, String text) {
        field.setText(text);
        field.notifyListeners(SWT.DefaultSelection, new Event());
        Ui.settle();
    }

    private static Composite shell() {
        return Ui.window().getShell();
    }

    @Test
    void explorerShowsTheFolder() {
        ExplorerView explorer = (ExplorerView) Ui.page().findView(ExplorerView.ID);
        assertNotNull(explorer);
        Ui.until("places in the explorer", () -> explorer.viewer().getTree().getItemCount() == 6);
        assertTrue(explorer.viewer().getTree().getItem(0).getItemCount() > ShopKind.values().length);
        assertEquals(1, explorer.viewer().getTree().getItem(1).getItemCount(), "one part");
    }

    @Test
    void fieldIsEditedUndoneRedoneAndSaved() throws IOException {
        Tool tool = tool("r10");
        LibraryEditor editor = library(tool);
        OpenFile file = session.fileOf(tool);
        assertFalse(editor.isDirty());
        type(Ui.field(shell(), "price", Text.class), "175.5");
        assertEquals(175.5, tool.getPrice());
        assertTrue(editor.isDirty());
        file.undo();
        Ui.settle();
        assertEquals(140, tool.getPrice());
        assertFalse(editor.isDirty());
        assertEquals("140", Ui.field(shell(), "price", Text.class).getText());
        file.redo();
        Ui.settle();
        assertEquals(175.5, tool.getPrice());
        Ui.page().saveEditor(editor, false);
        assertFalse(editor.isDirty());
        assertTrue(Files.readString(folder.resolve("library.pwlib")).contains("175.5"));
        Ui.picture("library");
    }

    @Test
    void severalRecordsAreChangedAtOnceAndUndoneAtOnce() {
        Tool first = tool("r4");
        LibraryEditor editor = library(first);
        editor.select(List.of(first, tool("r5"), tool("r6")));
        Ui.settle();
        type(Ui.field(shell(), "price", Text.class), "99");
        assertEquals(99, tool("r4").getPrice());
        assertEquals(99, tool("r6").getPrice());
        assertEquals(140, tool("r8").getPrice());
        session.fileOf(first).undo();
        assertEquals(140, tool("r4").getPrice());
        assertEquals(140, tool("r6").getPrice());
    }

    @Test
    void aRecordInUseStaysAndItsUsersAreNamed() {
        assertEquals(1, Uses.of(session.workspace().library().getMaterials().get(0)).stream()
                .filter(u -> u.contains("Base plate")).count());
        assertFalse(new Edits(session.fileOf(tool("r4"))).remove(session.workspace().library().getMaterials()));
        assertTrue(new Edits(session.fileOf(tool("r4"))).remove(List.of(tool("r4"))));
    }

    @Test
    void unreadableFigureChangesNothing() {
        Tool tool = tool("r8");
        LibraryEditor editor = library(tool);
        type(Ui.field(shell(), "price", Text.class), "12x");
        assertEquals(140, tool.getPrice());
        assertFalse(editor.isDirty());
    }

    @Test
    void revertGoesBackToWhatWasSaved() {
        Tool tool = tool("r6");
        LibraryEditor editor = library(tool);
        type(Ui.field(shell(), "price", Text.class), "1");
        type(Ui.field(shell(), "price", Text.class), "2");
        assertTrue(editor.isDirty());
        session.fileOf(tool).revert();
        assertEquals(140, tool.getPrice());
        assertFalse(editor.isDirty());
    }

    @Test
    void brokenRuleBecomesAFinding() {
        FindingsView findings = (FindingsView) Ui.page().findView(FindingsView.ID);
        Tool tool = tool("r12");
        library(tool);
        type(Ui.field(shell(), "lengthMm", Text.class), "-3");
        assertEquals(-3, tool.getLengthMm());
        Ui.until("a finding on the tool", () -> findings.findings().table().tabText(findings.findings().table().shown())
                .contains("Round 12"));
        Ui.picture("finding");
    }

    @Test
    void partIsDrawn() {
        PartEditor editor = (PartEditor) Editors.open(session.workspace().parts().get(0)).orElseThrow();
        Ui.until("the part's picture", () -> !editor.canvas().scene().parts().isEmpty());
        assertEquals(19, editor.canvas().scene().parts().get(0).contours().size(), "outer edge and 18 holes");
        Ui.picture("part");
    }

    @Test
    void orderIsPlannedAndAHitSelected() {
        PlanEditor editor = plan();
        Plan plan = (Plan) session.workspace().resourceSet().getResources().stream().flatMap(r -> r.getContents().stream())
                .filter(Plan.class::isInstance).findFirst().orElseThrow();
        assertEquals(PlanStatus.PROVEN, plan.getStatus(), () -> plan.getFindings().toString());
        Layout layout = plan.getJobs().get(0).getLayouts().get(0);
        Ui.until("the sheet's picture", () -> editor.canvas().scene().hitCount() == layout.getHits().size());
        int last = layout.getHits().size() - 1;
        editor.selectHit(last);
        assertEquals(last, editor.canvas().selected());
        assertEquals(layout.getHits().get(last).getToolUse(), editor.markedTool());
        clickSelects(editor, layout, 0);
        Ui.picture("plan");
        assertTrue(Files.exists(folder.resolve("plans").resolve(plan.getId() + ".pwplan")));
    }

    @Test
    void sheetsOfAPlannedOrderAreWritten() {
        plan();
        Ui.closeWhenOpen(Texts.of("export.title"));
        Exporting.start(Ui.window(), session.workspace().orders().get(0));
        Path out = folder.resolve("out");
        Ui.until("the workbooks", () -> Files.exists(out.resolve("cost-roll-up-O-1.xlsx"))
                && Files.exists(out.resolve("process-sheet-O-1-north.xlsx")));
        Ui.until("the end of the job", () -> Job.getJobManager().find(Background.FAMILY).length == 0);
        Ui.settle();
    }

    private static void clickSelects(PlanEditor editor, Layout layout, int number) {
        editor.canvas().goTo(layout.getHits().get(number).getXMm(), layout.getHits().get(number).getYMm());
        Ui.settle();
        int px = editor.canvas().view().px(layout.getHits().get(number).getXMm());
        int py = editor.canvas().view().py(layout.getHits().get(number).getYMm());
        Ui.click(editor.canvas(), px, py);
        assertEquals(number, editor.canvas().selected());
        assertTrue(editor.statusText().contains(layout.getHits().get(number).getToolUse().getTool().getName()),
                editor.statusText());
    }

    private PlanEditor plan() {
        Order order = session.workspace().orders().get(0);
        Planning.start(Ui.window(), order, session.workspace().library().getMachines());
        Ui.until("the plan's editor", () -> Ui.page().getActiveEditor() instanceof PlanEditor);
        return (PlanEditor) Ui.page().getActiveEditor();
    }

    @Test
    void cancelledPlanLeavesNothing() {
        Order order = session.workspace().orders().get(0);
        Planning.start(Ui.window(), order, session.workspace().library().getMachines());
        for (Job job : Job.getJobManager().find(Background.FAMILY)) {
            job.cancel();
        }
        Ui.until("the end of the job", () -> Job.getJobManager().find(Background.FAMILY).length == 0);
        Ui.settle();
        assertFalse(Files.exists(folder.resolve("plans").resolve("plan-o1-north.pwplan")));
        List<IEditorReference> open = List.of(Ui.page().getEditorReferences());
        assertTrue(open.stream().noneMatch(r -> PlanEditor.ID.equals(r.getId())));
    }
}
