// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.text.MessageFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;

import punchwright.engine.finding.Finding;

/** What the writers of cells share: the builder, the texts, the code before names, and names given to ids. */
final class CostContext {

    private static final ResourceBundle.Control CONTROL =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final CostSheetBuilder builder;
    private final String code;
    private final Locale locale;
    private final ResourceBundle texts;
    private final Map<String, String> ids = new LinkedHashMap<>();
    private String group = "";

    CostContext(CostSheetBuilder builder, String code, Locale locale) {
        this.builder = builder;
        this.code = code;
        this.locale = locale;
        this.texts = ResourceBundle.getBundle(CostContext.class.getPackageName() + ".cells", locale,
                CostContext.class.getClassLoader(), CONTROL);
    }

    String code() {
        return code;
    }

    /** Text of a key, with values in it. */
    String text(String key, Object... arguments) {
        return arguments.length == 0 ? texts.getString(key) : new MessageFormat(texts.getString(key), locale).format(arguments);
    }

    /** Cells added from now on stand under this section and heading. */
    void under(String sectionKey, String heading) {
        group = text(sectionKey) + " > " + heading;
    }

    /** Name of a cell of this machine's plan. */
    String own(String... parts) {
        String[] all = new String[parts.length + 1];
        all[0] = code;
        System.arraycopy(parts, 0, all, 1, parts.length);
        return CellNames.of(all);
    }

    /** Plain word for an id within a family of names; equal ids get equal words, different ids different words. */
    String word(String family, String id) {
        String known = ids.get(family + " " + id);
        if (known != null) {
            return known;
        }
        String plain = CellNames.of(family, id);
        String word = plain;
        for (int n = 2; taken(word); n++) {
            word = plain + "_" + n;
        }
        ids.put(family + " " + id, word);
        return word;
    }

    private boolean taken(String word) {
        return ids.values().stream().anyMatch(word::equalsIgnoreCase);
    }

    /** An input; the key names its label. */
    String input(String name, String key, String unit, double value, String sourceKey) {
        return builder.input(name, text(key), unit(unit), group, value, text(sourceKey));
    }

    /** An input shared by several parts: added once, and its value must agree. */
    String shared(String name, String label, String unit, double value, String sourceKey) {
        if (!builder.has(name)) {
            return builder.input(name, label, unit(unit), group, value, text(sourceKey));
        }
        if (builder.value(name) != value) {
            throw new IllegalArgumentException("cost input " + name + " (" + label + ") is given as " + builder.value(name)
                    + " and as " + value + "; give it one value");
        }
        return name;
    }

    String formula(String name, String key, String unit, Expression formula, String sourceKey) {
        return builder.formula(name, text(key), unit(unit), group, formula, text(sourceKey));
    }

    String formulaLabelled(String name, String label, String unit, Expression formula, String sourceKey) {
        return builder.formula(name, label, unit(unit), group, formula, text(sourceKey));
    }

    boolean has(String name) {
        return builder.has(name);
    }

    double value(String name) {
        return builder.value(name);
    }

    void report(CostReason reason, String subject, Object... arguments) {
        builder.report(Finding.of(reason, subject, arguments));
    }

    /** "$" in a unit stands for the currency. */
    private String unit(String unit) {
        return unit.replace("$", builder.currency());
    }
}
