// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import punchwright.model.plan.CostItem;
import punchwright.model.plan.Plan;

/** The figures of one or several plans of an order, each name once: what all plans share stands once for all. */
public final class FigureTable {

    private static final String TOTAL = "M_order_total";

    private final Map<String, Figure> figures = new LinkedHashMap<>();
    private final Map<Plan, String> codes = new LinkedHashMap<>();

    /**
     * @throws IllegalArgumentException when two plans give one name different values or formulas: they were made from different
     *     library revisions and cannot share a workbook
     */
    public FigureTable(List<Plan> plans) {
        List<Plan> costed = plans.stream().filter(p -> code(p) != null).toList();
        for (Plan plan : costed) {
            codes.put(plan, code(plan));
            String machine = costed.size() > 1 ? plan.getMachine().getName() : "";
            plan.getFigures().forEach(item -> add(Figure.of(item, machine)));
        }
    }

    /** Plans that carry a cost, with the code before their names. */
    public Map<Plan, String> codes() {
        return codes;
    }

    /** The plan with the least total cost; the first of equals. */
    Plan cheapest() {
        return codes.entrySet().stream().min(Comparator.comparingDouble(e -> get(e.getValue()
                + TOTAL).value())).orElseThrow().getKey();
    }

    List<Figure> all() {
        return List.copyOf(figures.values());
    }

    Figure get(String key) {
        return figures.get(key.toLowerCase(Locale.ROOT));
    }

    boolean has(String key) {
        return get(key) != null;
    }

    /** Sections in order of first appearance; only those with results, or only those with inputs. */
    List<String> sections(boolean inputs) {
        Set<String> sections = new LinkedHashSet<>();
        figures.values().stream().filter(f -> f.input() == inputs).forEach(f -> sections.add(f.section()));
        return new ArrayList<>(sections);
    }

    /** Figures of a section by heading, in order. */
    Map<String, List<Figure>> headings(String section, boolean inputs) {
        Map<String, List<Figure>> headings = new LinkedHashMap<>();
        figures.values().stream().filter(f -> f.input() == inputs && f.section().equals(section))
                .forEach(f -> headings.computeIfAbsent(f.title(), h -> new ArrayList<>()).add(f));
        return headings;
    }

    private void add(Figure figure) {
        String key = figure.key().toLowerCase(Locale.ROOT);
        Figure known = figures.get(key);
        if (known == null) {
            figures.put(key, figure);
            return;
        }
        if (known.value() != figure.value() || !known.formula().equals(figure.formula())) {
            throw new IllegalArgumentException("cost figure " + figure.key() + " (" + figure.label() + ") is " + known.value()
                    + " in one plan and "
                    + figure.value() + " in another; plan the order again on all machines with today's library");
        }
        figures.put(key, known.shared());
    }

    private static String code(Plan plan) {
        for (CostItem item : plan.getFigures()) {
            if (item.getKey() != null && item.getKey().endsWith(TOTAL)) {
                return item.getKey().substring(0, item.getKey().length() - TOTAL.length());
            }
        }
        return null;
    }
}
