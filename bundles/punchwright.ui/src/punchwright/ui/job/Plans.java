// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.util.List;
import java.util.Optional;

import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.PlanFile;
import punchwright.model.plan.Plan;
import punchwright.ui.editor.Editors;
import punchwright.ui.editor.FileInput;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Opens plans, which are long: they are read beside the window and taken into the workspace when they are there. */
public final class Plans {

    private Plans() {
    }

    /** The plan when it is loaded already. */
    static Optional<Plan> loaded(Session session, String id) {
        return session.workspace().resourceSet().getResources().stream().flatMap(r -> r.getContents().stream())
                .filter(Plan.class::isInstance).map(Plan.class::cast).filter(p -> id.equals(p.getId())).findFirst();
    }

    /** Opens a plan by its identifier. */
    public static void open(String id) {
        Session session = Session.current().orElseThrow();
        Optional<Plan> there = loaded(session, id);
        if (there.isPresent()) {
            Editors.open(there.get());
            return;
        }
        Background.start(Texts.of("job.readPlan", id), monitor -> session.workspace().readPlan(id), file -> {
            if (isCurrent(session)) {
                Editors.open(loaded(session, id).orElseGet(() -> session.workspace().take(file)));
                Session.changed();
            }
        });
    }

    /** Takes plans that were stored beside the window in, in the place of those before, and opens it when it is one. */
    static void take(IWorkbenchWindow window, Session session, List<PlanFile> files) {
        if (!isCurrent(session)) {
            return;
        }
        Plan last = null;
        for (PlanFile file : files) {
            loaded(session, file.plan().getId()).ifPresent(old -> close(window, session, old));
            last = session.workspace().take(file);
        }
        Session.changed();
        if (files.size() == 1) {
            Editors.open(last);
        }
    }

    private static boolean isCurrent(Session session) {
        return Session.current().filter(s -> s == session).isPresent();
    }

    private static void close(IWorkbenchWindow window, Session session, Plan old) {
        IWorkbenchPage page = window.getActivePage();
        IEditorPart editor = page == null ? null : page.findEditor(new FileInput(old));
        if (editor != null) {
            page.closeEditor(editor, false);
        }
        session.forget(old);
    }
}
