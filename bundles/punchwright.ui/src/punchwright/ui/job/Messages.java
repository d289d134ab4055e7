// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.util.Locale;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

import punchwright.model.files.WorkspaceException;
import punchwright.ui.text.Texts;

/** One clear message: what is the case, and the way out. */
public final class Messages {

    private Messages() {
    }

    /** The words for an error. */
    public static String of(Throwable error) {
        if (error instanceof WorkspaceException w) {
            return w.message(Locale.getDefault()) + "\n\n" + w.remedy(Locale.getDefault());
        }
        String message = error.getMessage();
        return message == null || message.isBlank() ? Texts.of("error.unknown", error.getClass().getSimpleName()) : message;
    }

    /** Says something by the key of its text. */
    public static void say(Shell shell, String key, Object... arguments) {
        MessageDialog.openInformation(shell, Texts.of("message.title"), Texts.of(key, arguments));
    }

    /** Shows an error; to be called on the UI thread. */
    public static void show(Shell shell, Throwable error) {
        MessageDialog.openError(shell, Texts.of("error.title"), of(error));
    }
}
