// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

import punchwright.model.shop.Named;
import punchwright.ui.session.OpenFile;
import punchwright.ui.text.Texts;

/** Removes records that nothing else points to; for the others it says who does. */
public final class RemoveRecords {

    private static final int NAMED = 6;

    private RemoveRecords() {
    }

    /** Removes what can be removed. */
    public static void from(Shell shell, OpenFile file, List<? extends EObject> records) {
        if (records.isEmpty()) {
            return;
        }
        for (EObject record : records) {
            List<String> users = Uses.of(record);
            if (!users.isEmpty()) {
                String name = record instanceof Named named ? named.getName() : Texts.of(record.eClass());
                MessageDialog.openInformation(shell, Texts.of("record.remove"), Texts.of("record.used", name,
                        String.join(", ", users.stream().limit(NAMED).toList()) + (users.size() > NAMED ? ", \u2026" : "")));
                return;
            }
        }
        new Edits(file).remove(records);
    }
}
