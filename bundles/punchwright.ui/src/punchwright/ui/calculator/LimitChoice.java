// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Named;
import punchwright.model.shop.Place;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/** What a force is compared with: nothing, a press, one of its places, or a multi-tool of the shop. */
final class LimitChoice {

    private static final double N_PER_KN = 1000;

    /** One line of the choice; the limit in N. */
    private record Limit(String name, double forceN) {
    }

    private final Label label;
    private final Combo combo;
    private List<Limit> limits = List.of();

    LimitChoice(Composite parent, Runnable changed) {
        label = new Label(parent, SWT.NONE);
        label.setText(Texts.of("calculator.compare"));
        combo = new Combo(parent, SWT.DROP_DOWN | SWT.READ_ONLY);
        combo.setData("field", "compare");
        combo.setVisibleItemCount(20);
        Accessibles.name(combo, Texts.of("calculator.compare"));
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(combo);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> changed.run()));
        fill();
    }

    Combo control() {
        return combo;
    }

    /** Only where the question compares with a limit. */
    void enable(boolean compares) {
        label.setEnabled(compares);
        combo.setEnabled(compares);
    }

    /** Takes machines and holders of the open workspace; what was chosen stays chosen where it is still there. */
    void fill() {
        String chosen = combo.getText();
        List<Limit> found = new ArrayList<>();
        found.add(new Limit(Texts.of("calculator.nothing"), 0));
        Session.current().ifPresent(s -> add(s.workspace().library(), found));
        limits = List.copyOf(found);
        combo.setItems(limits.stream().map(Limit::name).toArray(String[]::new));
        combo.select(Math.max(0, combo.indexOf(chosen)));
    }

    private static void add(Library library, List<Limit> found) {
        for (Machine m : library.getMachines()) {
            found.add(new Limit(name(m), m.getPressForceKn() * N_PER_KN));
            for (Place p : m.getPlaces()) {
                if (p.getForceLimitKn() > 0 && p.getForceLimitKn() != m.getPressForceKn()) {
                    found.add(new Limit(name(m) + ", " + name(p), p.getForceLimitKn() * N_PER_KN));
                }
            }
        }
        for (MultiToolHolder h : library.getHolders()) {
            found.add(new Limit(name(h), h.getForceLimitKn() * N_PER_KN));
        }
    }

    private static String name(Named record) {
        return record.getName() == null || record.getName().isBlank() ? record.getId() : record.getName();
    }

    /** In N; 0 for nothing. */
    double forceN() {
        return limits.get(combo.getSelectionIndex()).forceN();
    }
}
