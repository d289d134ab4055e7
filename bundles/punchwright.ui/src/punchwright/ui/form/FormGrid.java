// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The grid of a form: label, field, unit, once or twice in a line, by the room there is. */
final class FormGrid {

    /** Columns of one field. */
    private static final int TRIO = 3;
    private static final int FIELD_WIDTH = 96;
    private static final int NOTES_HEIGHT = 54;
    private static final int TWO_FIELDS_FROM_PX = 610;

    private final Composite body;
    private final List<Control> across = new ArrayList<>();
    private final List<Control> wideFields = new ArrayList<>();
    private final List<Label> fillers = new ArrayList<>();
    private int cells;
    private boolean two = true;

    FormGrid(Composite body) {
        this.body = body;
        GridLayout layout = new GridLayout(2 * TRIO, false);
        layout.marginWidth = 8;
        layout.marginHeight = 4;
        layout.horizontalSpacing = 6;
        layout.verticalSpacing = 4;
        body.setLayout(layout);
    }

    void title(Label title) {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, 2 * TRIO, 1);
        data.verticalIndent = 8;
        title.setLayoutData(data);
        across.add(title);
        cells = 0;
    }

    void block(Composite block, int height) {
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, false, 2 * TRIO, 1);
        data.heightHint = height;
        data.widthHint = FIELD_WIDTH;
        block.setLayoutData(data);
        across.add(block);
    }

    /** A wide field begins a line of its own. */
    void beforeField(Composite parent, boolean wide) {
        if (wide) {
            endOfGroup(parent);
        }
    }

    void field(Label label, Control field, Label unit, boolean wide) {
        boolean notes = field instanceof Text && (field.getStyle() & SWT.MULTI) != 0;
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false, wide ? 2 * TRIO - 2 : 1, 1);
        data.widthHint = FIELD_WIDTH;
        data.heightHint = notes ? NOTES_HEIGHT : SWT.DEFAULT;
        field.setLayoutData(data);
        label.setLayoutData(new GridData(SWT.FILL, notes ? SWT.TOP : SWT.CENTER, false, false));
        unit.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false));
        if (wide) {
            wideFields.add(field);
        }
        cells += wide ? 2 : 1;
    }

    /** Fills the rest of a line. */
    void endOfGroup(Composite parent) {
        if (cells % 2 == 1) {
            Label filler = new Label(parent, SWT.NONE);
            filler.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, false, false, TRIO, 1));
            fillers.add(filler);
            cells++;
        }
    }

    /** Arranges the grid for a width in pixels. */
    void fit(int width) {
        boolean wanted = width == 0 || width >= TWO_FIELDS_FROM_PX;
        if (wanted == two) {
            return;
        }
        two = wanted;
        int columns = two ? 2 * TRIO : TRIO;
        ((GridLayout) body.getLayout()).numColumns = columns;
        across.forEach(control -> ((GridData) control.getLayoutData()).horizontalSpan = columns);
        wideFields.forEach(control -> ((GridData) control.getLayoutData()).horizontalSpan = columns - 2);
        for (Label filler : fillers) {
            ((GridData) filler.getLayoutData()).exclude = !two;
            filler.setVisible(two);
        }
    }
}
