// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/**
 * One line above a form: the gravest verdict with its remedy, and how many more there are. Always as high, so that nothing jumps.
 */
final class VerdictLine extends Composite {

    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.NOTE };

    private final Label sign;
    private final Label words;

    VerdictLine(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 2).applyTo(this);
        sign = new Label(this, SWT.NONE);
        GridDataFactory.swtDefaults().hint(18, 18).align(SWT.CENTER, SWT.TOP).applyTo(sign);
        words = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(200, 36).applyTo(words);
        Accessibles.name(words, Texts.of("form.verdict"));
    }

    /** Shows verdicts on a record; {@code together} records are changed at once. */
    void show(List<Verdict> verdicts, int together) {
        if (verdicts.isEmpty()) {
            sign.setImage(null);
            words.setText(together > 1 ? Texts.of("form.together", together) : Texts.of("form.none"));
            words.setToolTipText(null);
            return;
        }
        Verdict first = verdicts.get(0);
        sign.setImage(SIGNS[first.rank()].image());
        String word = Texts.of("severity." + first.rank());
        String more = verdicts.size() > 1 ? "  " + Texts.of("form.more", verdicts.size() - 1) : "";
        words.setText(word + (first.code().isEmpty() ? "" : " " + first.code()) + ": " + first.message() + " "
                + first.remedy() + more);
        words.setToolTipText(words.getText());
    }
}
