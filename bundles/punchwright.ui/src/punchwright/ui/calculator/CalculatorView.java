// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

import punchwright.engine.press.Basis;
import punchwright.engine.press.Calculation;
import punchwright.engine.press.Quantity;
import punchwright.engine.press.QuestionException;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/** Force, clearance and the other questions that come by telephone: question and values above, the answer below while typing. */
public final class CalculatorView extends ViewPart {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.calculator";
    private static final String LIMIT = "limit";

    private Combo question;
    private SheetChoice sheet;
    private LimitChoice limit;
    private InputForm inputs;
    private AnswerArea answer;
    private UnitChoice lengths;
    private UnitChoice forces;
    private Calculation shown;
    private final Runnable follower = this::refill;

    @Override
    public void createPartControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(body);
        choices(body);
        SashForm halves = new SashForm(body, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
        inputs = new InputForm(halves, this::work);
        answer = new AnswerArea(halves);
        halves.setWeights(1, 1);
        below(body);
        Session.addListener(follower);
        ask(Calculation.FORCE);
    }

    private void choices(Composite body) {
        Composite top = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(6, 3).applyTo(top);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(top);
        new Label(top, SWT.NONE).setText(Texts.of("calculator.question"));
        question = new Combo(top, SWT.DROP_DOWN | SWT.READ_ONLY);
        question.setData("field", "question");
        question.setVisibleItemCount(Calculation.values().length);
        Accessibles.name(question, Texts.of("calculator.question"));
        for (Calculation c : Calculation.values()) {
            question.add(c.title(Locale.getDefault()));
        }
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(question);
        question.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> ask(question())));
        sheet = new SheetChoice(top, this::work);
        limit = new LimitChoice(top, this::work);
    }

    private void below(Composite body) {
        Composite bottom = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(6, 2).applyTo(bottom);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bottom);
        Label in = new Label(bottom, SWT.NONE);
        in.setText(Texts.of("calculator.results"));
        lengths = new UnitChoice(bottom, Quantity.LENGTH, Texts.of("calculator.lengths"), Quantity.LENGTH.units().getFirst());
        forces = new UnitChoice(bottom, Quantity.FORCE, Texts.of("calculator.forces"), Quantity.FORCE.units().get(1));
        lengths.control().addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> work()));
        forces.control().addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> work()));
        Button copy = new Button(bottom, SWT.PUSH);
        copy.setText(Texts.of("calculator.copy"));
        copy.setData("field", "copy");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.END, SWT.CENTER).applyTo(copy);
        copy.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> answer.copy()));
    }

    private Calculation question() {
        return Calculation.values()[question.getSelectionIndex()];
    }

    /** Asks another question; what was typed and fits stays. */
    public void ask(Calculation asked) {
        question.select(asked.ordinal());
        limit.enable(asked.inputs().stream().anyMatch(i -> i.name().equals(LIMIT)));
        inputs.show(asked);
        work();
    }

    private void refill() {
        if (!question.isDisposed()) {
            sheet.fill();
            limit.fill();
            work();
        }
    }

    /** Works the answer out anew. */
    private void work() {
        Basis basis = sheet.basis();
        inputs.hint(basis);
        answer.show(lines(basis), shown != question());
        shown = question();
    }

    private List<AnswerLine> lines(Basis basis) {
        try {
            Map<String, Double> values = inputs.values();
            List<String> missing = inputs.missing(basis);
            if (!missing.isEmpty()) {
                return List.of(new AnswerLine(Texts.of("calculator.missing", String.join(", ", missing)), AnswerLine.Kind.NOTE));
            }
            if (limit.control().isEnabled() && limit.forceN() > 0) {
                values.put(LIMIT, limit.forceN());
            }
            return new AnswerText(Locale.getDefault(), units()).lines(question().answer(values, basis),
                    sheet.control().getText());
        } catch (QuestionException e) {
            String text = e.finding().message(Locale.getDefault()) + " " + e.finding().remedy(Locale.getDefault());
            return List.of(new AnswerLine(text.strip(), AnswerLine.Kind.TROUBLE));
        } catch (IllegalArgumentException e) {
            return List.of(new AnswerLine(e.getMessage(), AnswerLine.Kind.TROUBLE));
        }
    }

    private Map<Quantity, Quantity.Unit> units() {
        Map<Quantity, Quantity.Unit> units = new EnumMap<>(Quantity.class);
        units.put(Quantity.LENGTH, lengths.unit());
        units.put(Quantity.FORCE, forces.unit());
        return units;
    }

    /** The answer as it would be copied, for tests. */
    public String answerText() {
        return AnswerText.plain(answer.lines());
    }

    /** Changes the units in which results are read, as a person does; for tests. */
    public void readIn(String lengthUnit, String forceUnit) {
        lengths.select(lengthUnit);
        forces.select(forceUnit);
    }

    @Override
    public void setFocus() {
        question.setFocus();
    }

    @Override
    public void dispose() {
        Session.removeListener(follower);
        super.dispose();
    }
}
