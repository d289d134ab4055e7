// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.explorer;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.ActionFactory;

import punchwright.ui.drawing.TakenIn;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Undo and redo while the explorer is active: of changes that make or take away whole files. */
public final class MadeActions {

    private final IActionBars bars;
    private final Action undo = new Action() {
        @Override
        public void run() {
            MadeActions.this.undo();
        }
    };
    private final Action redo = new Action() {
        @Override
        public void run() {
            stack().redo();
            refresh();
        }
    };

    MadeActions(IActionBars bars) {
        this.bars = bars;
        bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), undo);
        bars.setGlobalActionHandler(ActionFactory.REDO.getId(), redo);
    }

    private static BasicCommandStack stack() {
        return Session.current().map(Session::made).orElseGet(BasicCommandStack::new);
    }

    /** Takes the last back, unless somebody uses what it made; then it says who. */
    public void undo() {
        if (stack().canUndo()) {
            if (stack().getUndoCommand() instanceof TakenIn made && !made.hindrances().isEmpty()) {
                MessageDialog.openInformation(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell(),
                        Texts.of("action.undo"),
                        Texts.of("intake.used", String.join(", ", made.hindrances())));
            } else {
                stack().undo();
            }
        }
        refresh();
    }

    void refresh() {
        BasicCommandStack stack = stack();
        undo.setEnabled(stack.canUndo());
        redo.setEnabled(stack.canRedo());
        undo.setText(label("action.undo", stack.canUndo() ? stack.getUndoCommand() : null));
        redo.setText(label("action.redo", stack.canRedo() ? stack.getRedoCommand() : null));
        bars.updateActionBars();
    }

    private static String label(String key, Command command) {
        return Texts.of(key) + (command == null ? "" : " \u2013 " + command.getLabel());
    }
}
