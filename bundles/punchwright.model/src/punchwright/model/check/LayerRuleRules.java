// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import punchwright.model.shop.LayerRule;
import punchwright.model.shop.ShopPackage.Literals;

/** Rules for the list of layer rules of the shop, or of one drawing. */
final class LayerRuleRules {

    /** Signs that a symbol name must not have (DXF Reference, "Symbol Table Group Codes"), but for * and ? of a pattern. */
    private static final Pattern NO_NAME = Pattern.compile(".*[<>/\\\\\":,=|].*|\\s*");
    private static final List<String> EVERY = List.of("*");

    private LayerRuleRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-016", LayerRule.class, (rule, r) -> {
            if (isEmpty(rule)) {
                r.add(Literals.LAYER_RULE__LAYER_PATTERNS);
            }
        });
        rows.warning("PW-M-017", LayerRule.class, (rule, r) -> {
            LayerRule before = isEmpty(rule) ? null : earlier(rule, LayerRuleRules::same);
            if (before != null) {
                r.add(Literals.LAYER_RULE__LAYER_PATTERNS, before);
            }
        });
        rows.warning("PW-M-018", LayerRule.class, (rule, r) -> {
            LayerRule before = isEmpty(rule) || earlier(rule, LayerRuleRules::same) != null ? null
                    : earlier(rule, LayerRuleRules::covers);
            if (before != null) {
                r.add(Literals.LAYER_RULE__LAYER_PATTERNS, before);
            }
        });
        rows.error("PW-M-019", LayerRule.class, (rule, r) -> {
            patterns(rule.getLayerPatterns(), Literals.LAYER_RULE__LAYER_PATTERNS, r);
            patterns(rule.getLineTypePatterns(), Literals.LAYER_RULE__LINE_TYPE_PATTERNS, r);
        });
    }

    private static void patterns(List<String> patterns, EStructuralFeature feature, Report report) {
        for (String pattern : patterns) {
            if (pattern == null || NO_NAME.matcher(pattern).matches()) {
                report.add(feature, pattern == null ? "" : pattern);
            }
        }
    }

    private static boolean isEmpty(LayerRule rule) {
        return rule.getLayerPatterns().isEmpty() && rule.getLineTypePatterns().isEmpty() && rule.getColour() == 0;
    }

    /** How two rules stand to each other. */
    private interface Relation {
        boolean holds(LayerRule before, LayerRule rule);
    }

    private static LayerRule earlier(LayerRule rule, Relation relation) {
        EReference in = rule.eContainmentFeature();
        if (in == null || !in.isMany()) {
            return null;
        }
        for (Object other : (List<?>) rule.eContainer().eGet(in)) {
            if (other == rule) {
                return null;
            }
            if (!isEmpty((LayerRule) other) && relation.holds((LayerRule) other, rule)) {
                return (LayerRule) other;
            }
        }
        return null;
    }

    private static boolean same(LayerRule a, LayerRule b) {
        return a.getColour() == b.getColour() && names(a.getLayerPatterns()).equals(names(b.getLayerPatterns()))
                && names(a.getLineTypePatterns()).equals(names(b.getLineTypePatterns()));
    }

    private static Set<String> names(List<String> patterns) {
        Set<String> names = new TreeSet<>();
        patterns.forEach(p -> names.add(p.strip().toUpperCase(Locale.ROOT)));
        return names;
    }

    private static boolean covers(LayerRule before, LayerRule rule) {
        return (before.getColour() == 0 || before.getColour() == rule.getColour())
                && covers(before.getLayerPatterns(), rule.getLayerPatterns())
                && covers(before.getLineTypePatterns(), rule.getLineTypePatterns());
    }

    private static boolean covers(List<String> wide, List<String> narrow) {
        List<String> all = wide.isEmpty() ? EVERY : wide;
        return (narrow.isEmpty() ? EVERY : narrow).stream().allMatch(n -> all.stream().anyMatch(w -> covers(w, n)));
    }

    /**
     * Whether the first pattern surely fits every name that the second fits: the second is read as a name whose * only a * takes
     * and whose ? a ? takes as well.
     */
    static boolean covers(String wide, String narrow) {
        String w = wide.strip().toUpperCase(Locale.ROOT);
        String n = narrow.strip().toUpperCase(Locale.ROOT);
        int i = 0;
        int k = 0;
        int star = -1;
        int mark = 0;
        while (i < n.length()) {
            if (k < w.length() && w.charAt(k) == '*') {
                star = k++;
                mark = i;
            } else if (k < w.length() && (w.charAt(k) == '?' ? n.charAt(i) != '*' : w.charAt(k) == n.charAt(i))) {
                k++;
                i++;
            } else if (star >= 0) {
                k = star + 1;
                i = ++mark;
            } else {
                return false;
            }
        }
        return w.substring(k).chars().allMatch(c -> c == '*');
    }
}
