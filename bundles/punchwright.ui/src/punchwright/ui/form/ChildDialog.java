// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

import punchwright.ui.session.OpenFile;
import punchwright.ui.text.Texts;

/** One line of a list as a form. Changes go to the command stack at once; the window is only a closer look. */
final class ChildDialog extends Dialog {

    private final OpenFile file;
    private final EObject object;
    private final String currency;

    ChildDialog(Shell parent, OpenFile file, EObject object, String currency) {
        super(parent);
        this.file = file;
        this.object = object;
        this.currency = currency;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Texts.of(object.eClass()));
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Point getInitialSize() {
        return new Point(640, 420);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        FieldGroup all = Fields.all(object.eClass());
        ObjectForm form = new ObjectForm(area, List.of(all), currency);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        form.setInput(file, object);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.CLOSE_ID, IDialogConstants.CLOSE_LABEL, false);
    }

    @Override
    protected void buttonPressed(int id) {
        close();
    }
}
