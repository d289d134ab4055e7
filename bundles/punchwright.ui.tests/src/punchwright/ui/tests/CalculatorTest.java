// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.press.Calculation;
import punchwright.engine.press.Input;
import punchwright.ui.calculator.CalculatorView;

/** The calculator in the real window: answers while typing, units, comparison with a place of the shop, copying, findings. */
class CalculatorTest {

    private static final char DECIMAL = DecimalFormatSymbols.getInstance(Locale.getDefault()).getDecimalSeparator();

    @TempDir
    private Path folder;

    private CalculatorView view;

    @BeforeEach
    void show() throws Exception {
        view = (CalculatorView) Ui.page().showView(CalculatorView.ID);
        Ui.settle();
    }

    @AfterEach
    void hide() {
        Ui.page().hideView(view);
        Ui.closeAll();
    }

    private static Composite shell() {
        return Ui.window().getShell();
    }

    private static void type(String field, String value) {
        Ui.field(shell(), field, Text.class).setText(value.replace('.', DECIMAL));
        Ui.settle();
    }

    private static void choose(String field, int index) {
        Combo combo = Ui.field(shell(), field, Combo.class);
        combo.select(index);
        combo.notifyListeners(SWT.Selection, new Event());
        Ui.settle();
    }

    private String answer() {
        return view.answerText().replace(DECIMAL, '.');
    }

    /** A group alone, so that strengths are typed: the group after the materials. */
    private static void mildSteel() {
        Combo sheet = Ui.field(shell(), "sheet", Combo.class);
        choose("sheet", sheet.getItemCount() - punchwright.engine.press.MaterialGroup.values().length);
    }

    /** L t tau by hand: 314.16 x 2 x 370 = 232 478 N; 23.7062 t (NIST SP 811). */
    @Test
    void theAnswerFollowsTheTyping() {
        mildSteel();
        view.ask(Calculation.FORCE);
        type("length", "314.16");
        type("thickness", "2");
        assertFalse(answer().contains("232.478 kN"), "strength is missing: " + answer());
        type("strength", "370");
        assertTrue(answer().contains("232.478 kN"), answer());
        view.readIn("mm", "t");
        assertTrue(answer().contains("23.7062 t"), answer());
        type("thickness", "12");
        assertTrue(answer().contains("8 mm"), "range told: " + answer());
        type("thickness", "zwei");
        assertTrue(answer().contains("zwei"), answer());
        view.readIn("mm", "kN");
    }

    /** Another unit shows the same length: 25.4 mm is 1 in. */
    @Test
    void unitsChangeWithoutChangingTheValue() {
        mildSteel();
        view.ask(Calculation.FORCE);
        type("length", "25.4");
        type("thickness", "2");
        type("strength", "320");
        String before = answer();
        choose("length.unit", 1);
        assertEquals("1", Ui.field(shell(), "length", Text.class).getText());
        assertEquals(before, answer());
        type("length", "2");
        assertTrue(answer().contains("32.512 kN"), "2 in x 2 mm x 320 MPa: " + answer());
        choose("length.unit", 0);
    }

    /** The material's strength stands in the empty field; of the press's force a share is told, above it a warning. */
    @Test
    void materialAndPressOfTheShop() throws Exception {
        SmallShop.make(folder);
        Ui.open(folder);
        view.ask(Calculation.FORCE);
        choose("sheet", 0);
        type("strength", "");
        type("length", "100");
        type("thickness", "2");
        String hint = Ui.field(shell(), "strength", Text.class).getMessage();
        assertFalse(hint.isEmpty());
        assertTrue(answer().contains("tau = " + hint.replace(DECIMAL, '.') + " MPa"), answer());
        Combo compare = Ui.field(shell(), "compare", Combo.class);
        assertTrue(compare.getItemCount() > 1, "the shop has a press");
        choose("compare", 1);
        assertTrue(answer().contains("pl = 100 \u00b7 Fw / Fl"), answer());
        type("length", "3000");
        assertTrue(answer().contains("%"), answer());
        Ui.picture("calculator");
        view.ask(Calculation.CLEARANCE);
        Ui.settle();
        assertFalse(Ui.field(shell(), "compare", Combo.class).isEnabled());
        assertTrue(answer().contains("c1 = 2 \u00b7 c \u00b7 t"), answer());
        Ui.picture("calculator-clearance");
    }

    @Test
    void copiesAllAsText() {
        mildSteel();
        view.ask(Calculation.FORCE);
        type("length", "100");
        type("thickness", "2");
        type("strength", "320");
        Button copy = Ui.field(shell(), "copy", Button.class);
        copy.notifyListeners(SWT.Selection, new Event());
        Clipboard clipboard = new Clipboard(Display.getCurrent());
        try {
            String text = (String) clipboard.getContents(TextTransfer.getInstance());
            assertEquals(view.answerText(), text);
            assertTrue(text.replace(DECIMAL, '.').contains("64 kN") && text.contains("F0 = Ls \u00b7 t \u00b7 tau"), text);
        } finally {
            clipboard.dispose();
        }
    }

    @Test
    void everyQuestionHasItsFields() {
        for (Calculation question : Calculation.values()) {
            view.ask(question);
            Ui.settle();
            for (Input input : question.inputs()) {
                if (!input.name().equals("limit")) {
                    assertFalse(Ui.field(shell(), input.name(), Text.class).getToolTipText().isBlank(), question + " " + input);
                }
            }
            assertFalse(answer().isBlank(), question.toString());
            assertFalse(answer().contains("!calculator"), answer());
        }
    }

    @Test
    void theViewIsClosedAtFirstAndInTheMenu() {
        Ui.page().hideView(view);
        Ui.page().resetPerspective();
        Ui.settle();
        for (IViewReference open : Ui.page().getViewReferences()) {
            assertFalse(CalculatorView.ID.equals(open.getId()), "open at first");
        }
        assertTrue(java.util.List.of(Ui.page().getShowViewShortcuts()).contains(CalculatorView.ID));
    }
}
