// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.edit.Edits;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Named;
import punchwright.model.work.Order;
import punchwright.planner.intake.NewPart;
import punchwright.planner.intake.TakeIn;
import punchwright.ui.editor.FileInput;
import punchwright.ui.job.Messages;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/**
 * Parts taken in from drawings, as one command: undo takes parts, order and drawings back, redo brings them again. Rules that
 * became rules of the shop are a change of the library, with its own undo there.
 */
public final class TakenIn extends AbstractCommand {

    private final Session session;
    private final TakeIn takeIn;
    private final List<LayerRule> keptRules;
    private final int count;

    TakenIn(Session session, List<NewPart> parts, Order order, List<LayerRule> keptRules) {
        super(Texts.of("intake.command", parts.size()));
        this.session = session;
        this.keptRules = keptRules;
        this.count = parts.size();
        this.takeIn = new TakeIn(session.workspace(), parts, order, TakenIn::onUi);
    }

    /** Runs on the thread that the model belongs to and hands the exception on. */
    private static void onUi(TakeIn.ModelWork work) throws IOException {
        Exception[] failed = new Exception[1];
        Display.getDefault().syncExec(() -> {
            try {
                work.run();
            } catch (IOException | RuntimeException e) {
                failed[0] = e;
            }
        });
        if (failed[0] instanceof IOException e) {
            throw e;
        }
        if (failed[0] instanceof RuntimeException e) {
            throw e;
        }
    }

    /** Does it, beside the window, with progress and cancel. */
    void run(IProgressMonitor monitor) throws InvocationTargetException, InterruptedException {
        int steps = 1000;
        monitor.beginTask(Texts.of("job.takeIn", count), steps);
        try {
            takeIn.run(new Progress() {
                @Override
                public void at(String step, double share) {
                    monitor.subTask(step);
                    monitor.worked(steps / (2 * count + 1));
                }

                @Override
                public boolean cancelled() {
                    return monitor.isCanceled();
                }
            });
        } catch (CancelledException e) {
            throw new InterruptedException();
        } catch (IOException | RuntimeException e) {
            throw new InvocationTargetException(e);
        } finally {
            monitor.done();
        }
    }

    /** Puts it on the session's stack, so that it can be undone, and the rules into the library. */
    void enter() {
        session.made().execute(this);
        KeptRules.enter(session, keptRules);
        Session.changed();
    }

    @Override
    protected boolean prepare() {
        return true;
    }

    @Override
    public void execute() {
        // the records are written before, beside the window
    }

    /** Who else uses what was taken in, or changed it: then it cannot be taken back. */
    public List<String> hindrances() {
        Set<String> found = new LinkedHashSet<>();
        List<Named> mine = takeIn.written();
        for (Named record : mine) {
            if (session.isDirty(record)) {
                found.add(Texts.of("intake.changed", record.getName()));
            }
            for (EObject user : Edits.whereUsed(record)) {
                EObject root = EcoreUtil.getRootContainer(user);
                if (!mine.contains(root)) {
                    found.add(root instanceof Named named ? named.getName() : Texts.of(root.eClass()));
                }
            }
        }
        return List.copyOf(found);
    }

    @Override
    public void undo() {
        List<Named> records = takeIn.written();
        closeEditors(records);
        try {
            takeIn.undo();
        } catch (IOException e) {
            Messages.show(null, e);
        }
        records.forEach(session::forget);
        Session.changed();
    }

    @Override
    public void redo() {
        try {
            takeIn.redo();
        } catch (IOException e) {
            Messages.show(null, e);
        }
        Session.changed();
    }

    private static void closeEditors(List<Named> records) {
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            IWorkbenchPage page = window.getActivePage();
            for (Named record : records) {
                IEditorPart editor = page == null ? null : page.findEditor(new FileInput(record));
                if (editor != null) {
                    page.closeEditor(editor, false);
                }
            }
        }
    }

    /** The records that were written. */
    public List<Named> records() {
        return takeIn.written();
    }
}
