// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

/**
 * A way out of a refusal that was found by asking the rule that refused once more: with it the refusal is gone.
 *
 * @param kind   what to change
 * @param value  to which value, in the kind's unit; 0 where the kind has none
 * @param id     stable id of the machine, material or tool; empty where there is none
 * @param name   what the shop calls it; empty where there is none
 */
public record WayOut(Kind kind, double value, String id, String name) {

    /** What to change. */
    public enum Kind {
        /** Thinner sheet: largest thickness, mm, to 0.01. */
        THINNER,
        /** Thicker sheet: least thickness, mm, to 0.01. */
        THICKER,
        /** Another material of the shop at the same thickness. */
        MATERIAL,
        /** Another machine of the shop: force limit of its strongest place that takes the tool, kN; 0 without a tool. */
        MACHINE,
        /** Shear ground on the punch: height, mm. */
        SHEAR,
        /** Another die: total clearance, mm. */
        DIE,
        /** A tool that is new or one more of it: number on hand. */
        NEW_TOOL,
        /** A forbidden tool allowed again. */
        ALLOW,
        /** The part turned on the sheet, degrees, counter-clockwise positive. */
        TURN_PART
    }

    public static WayOut of(Kind kind, double value) {
        return new WayOut(kind, value, "", "");
    }

    /** In words, with the unit. */
    public String text(Locale locale) {
        return new MessageFormat(texts(locale).getString(kind.name()), locale).format(new Object[] { value, name });
    }

    /** All of them as one sentence with a space before; empty for none. */
    static String sentence(List<WayOut> ways, Locale locale) {
        if (ways.isEmpty()) {
            return "";
        }
        return " " + texts(locale).getString("WAYS") + " "
                + ways.stream().map(w -> w.text(locale)).collect(Collectors.joining("; ")) + ".";
    }

    private static ResourceBundle texts(Locale locale) {
        return ResourceBundle.getBundle("punchwright.engine.finding.ways", locale, WayOut.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}
