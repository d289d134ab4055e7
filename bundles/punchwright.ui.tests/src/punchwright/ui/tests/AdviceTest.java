// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.eclipse.core.runtime.jobs.Job;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.advice.AdditionKind;
import punchwright.engine.advice.Recommendation;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.Tool;
import punchwright.ui.job.Background;
import punchwright.ui.session.Session;
import punchwright.ui.tooling.AdviceView;

/** Which tool to buy, in the real workbench: ranked, stopped, taken into the library and taken back. */
class AdviceTest {

    @TempDir
    Path folder;
    private Session session;
    private AdviceView view;

    @BeforeEach
    void open() throws Exception {
        SmallShop.make(folder);
        session = Ui.open(folder);
        view = (AdviceView) Ui.page().showView(AdviceView.ID);
        Ui.settle();
    }

    @AfterEach
    void close() {
        Ui.page().hideView(view);
        Ui.closeAll();
    }

    private Library library() {
        return session.workspace().library();
    }

    private void work() {
        view.work();
        Ui.until("the advice", () -> view.ranking().shownCount() > 0);
        Ui.settle();
    }

    @Test
    void theRankingFallsAndEachRowSaysWhereItSaves() {
        work();
        double before = Double.MAX_VALUE;
        for (Recommendation r : view.ranking().shown()) {
            assertTrue(r.saving().perYear() <= before + 1e-9, r.toString());
            before = r.saving().perYear();
            assertFalse(r.parts().isEmpty() && r.makesPossible().isEmpty(), r.toString());
            assertTrue(r.paybackYears() >= 0, r.toString());
        }
        Ui.picture("advice");
    }

    @Test
    void aDraftIsAddedAsARecordThatNoPlanUsesAndIsUndone() {
        work();
        Recommendation tool = view.ranking().shown().stream().filter(r -> r.addition().kind() == AdditionKind.TOOL).findFirst()
                .orElseThrow();
        int owned = library().getTools().size();
        view.ranking().select(tool);
        view.addDraft();
        Ui.settle();
        assertEquals(owned + 1, library().getTools().size());
        Tool draft = library().getTools().get(owned);
        assertEquals(ItemStatus.ON_ORDER, draft.getStatus());
        assertEquals(0, draft.getOnHand());
        assertEquals(tool.addition().tool().lengthMm(), draft.getLengthMm());
        assertEquals(tool.addition().price().value(), draft.getPrice());
        assertTrue(draft.getNotes().contains(tool.addition().why()), draft.getNotes());
        session.fileOf(library()).undo();
        assertEquals(owned, library().getTools().size());
    }

    @Test
    void stoppedWorkShowsNothing() {
        view.work();
        view.stop();
        Ui.until("the end of the job", () -> Job.getJobManager().find(Background.FAMILY).length == 0);
        Ui.settle();
        assertEquals(0, view.ranking().totalCount());
    }
}
