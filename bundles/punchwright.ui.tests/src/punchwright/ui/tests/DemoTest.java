// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanStatus;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.ui.editor.Editors;
import punchwright.ui.findings.FindingsView;
import punchwright.ui.job.Planning;
import punchwright.ui.job.Plans;
import punchwright.ui.library.LibraryEditor;
import punchwright.ui.library.ShopKind;
import punchwright.ui.part.PartEditor;
import punchwright.ui.plan.PlanEditor;
import punchwright.ui.session.Session;

/** The workbench on a copy of the demo shop. */
class DemoTest {

    @TempDir
    Path folder;
    private Session session;

    @BeforeEach
    void open() throws IOException {
        copy(demo(), folder);
        session = Ui.open(folder);
    }

    @AfterEach
    void close() {
        Ui.closeAll();
    }

    private static Path demo() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.exists(at.resolve("demo-workspace/library.pwlib"))) {
                return at.resolve("demo-workspace");
            }
        }
        throw new IllegalStateException("No demo workspace above " + Path.of("").toAbsolutePath());
    }

    /** Copies what the shop keeps, not what was planned or written before. */
    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String place = from.relativize(file).getName(0).toString();
                if (!List.of("out", "plans", ".lock").contains(place)) {
                    Path target = to.resolve(from.relativize(file));
                    Files.createDirectories(target.getParent());
                    Files.copy(file, target);
                }
            }
        }
    }

    @Test
    void everyKindOfRecordIsShown() {
        LibraryEditor editor = (LibraryEditor) Editors.open(session.workspace().library()).orElseThrow();
        for (ShopKind kind : ShopKind.values()) {
            editor.show(kind);
            Ui.settle();
            Ui.picture("demo-" + kind.name().toLowerCase(java.util.Locale.ROOT));
            assertTrue(editor.shownRecords(kind) > 0, kind.toString());
        }
    }

    @Test
    void theDemoHasNoErrors() {
        FindingsView view = (FindingsView) Ui.page().findView(FindingsView.ID);
        Ui.until("the scan", view::isScanned);
        List<String> errors = view.findings().table().shown().stream().filter(r -> r.rank() == 0).map(r -> r.message()).toList();
        assertEquals(List.of(), errors);
    }

    @Test
    void everyPartIsDrawn() {
        assertTrue(session.workspace().parts().size() >= 12);
        for (Part part : session.workspace().parts()) {
            PartEditor editor = (PartEditor) Editors.open(part).orElseThrow();
            Ui.until("picture of " + part.getName(), () -> !editor.canvas().scene().parts().isEmpty());
            Ui.page().closeEditor(editor, false);
        }
    }

    @Test
    void anOrderIsPlannedClosedAndOpenedAgain() {
        Order order = session.workspace().orders().get(0);
        Planning.start(Ui.window(), order, session.workspace().library().getMachines().subList(0, 1));
        Ui.until("the plan's editor", () -> Ui.page().getActiveEditor() instanceof PlanEditor);
        PlanEditor editor = (PlanEditor) Ui.page().getActiveEditor();
        Ui.until("the sheet's picture", () -> editor.canvas().scene().hitCount() > 0);
        Ui.picture("demo-plan");
        Plan plan = editor.plan();
        assertEquals(PlanStatus.PROVEN, plan.getStatus());
        assertTrue(plan.getTotalCost() > 0);
        int hits = editor.canvas().scene().hitCount();
        session = Ui.open(folder);
        Plans.open(plan.getId());
        Ui.until("the plan read again", () -> Ui.page().getActiveEditor() instanceof PlanEditor);
        PlanEditor again = (PlanEditor) Ui.page().getActiveEditor();
        Ui.until("the sheet's picture again", () -> again.canvas().scene().hitCount() > 0);
        assertEquals(hits, again.canvas().scene().hitCount());
    }
}
