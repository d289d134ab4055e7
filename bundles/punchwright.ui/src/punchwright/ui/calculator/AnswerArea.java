// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.List;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;

import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** Shows an answer as text that can be selected, read out and copied. */
final class AnswerArea {

    private static final int INDENT = 12;

    private final StyledText text;
    private List<AnswerLine> lines = List.of();

    AnswerArea(Composite parent) {
        text = new StyledText(parent, SWT.BORDER | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
        text.setMargins(6, 4, 6, 4);
        text.setAlwaysShowScrollBars(false);
        Accessibles.name(text, Texts.of("calculator.answer"));
    }

    StyledText control() {
        return text;
    }

    List<AnswerLine> lines() {
        return lines;
    }

    /**
     * @param anew whether another question is answered; its results come into sight, as they do unless a person reads further
     * down
     */
    void show(List<AnswerLine> shown, boolean anew) {
        int top = anew || !text.isFocusControl() ? 0 : text.getTopPixel();
        lines = List.copyOf(shown);
        text.setText(String.join("\n", lines.stream().map(AnswerLine::text).toList()));
        for (int i = 0; i < lines.size(); i++) {
            style(i, lines.get(i));
        }
        text.setTopPixel(top);
    }

    private void style(int line, AnswerLine shown) {
        int indent = switch (shown.kind()) {
            case TITLE, TROUBLE -> 0;
            case DETAIL -> 2 * INDENT;
            default -> INDENT;
        };
        text.setLineIndent(line, 1, indent);
        text.setLineWrapIndent(line, 1, indent);
        StyleRange range = new StyleRange();
        range.start = text.getOffsetAtLine(line);
        range.length = shown.text().length();
        range.foreground = colour(shown.kind());
        boolean bold = shown.kind() == AnswerLine.Kind.RESULT;
        if (bold) {
            range.length = Math.max(1, shown.text().indexOf("  "));
        }
        range.fontStyle = bold || shown.kind() == AnswerLine.Kind.TITLE ? SWT.BOLD : SWT.NORMAL;
        if (range.length > 0) {
            text.setStyleRange(range);
        }
    }

    private static Color colour(AnswerLine.Kind kind) {
        return switch (kind) {
            case DETAIL -> Inks.of(Ink.PENCIL);
            case WARNING -> Inks.of(Ink.WARNING);
            case TROUBLE -> Inks.of(Ink.ERROR);
            case NOTE -> Inks.of(Ink.NOTE);
            default -> null;
        };
    }

    /** All of the answer as text on the clipboard. */
    void copy() {
        Clipboard clipboard = new Clipboard(text.getDisplay());
        try {
            clipboard.setContents(new Object[] { AnswerText.plain(lines) }, new Transfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }
}
