// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

/**
 * A way out of a refusal that was found by asking the rule that refused once more: with it the refusal is gone. Where one change
 * is not enough it holds a second one. Kinds from {@link Kind#OTHER_PROCESS} on say that none was found.
 *
 * @param kind   what to change
 * @param value  to which value, in the kind's unit; 0 where the kind has none
 * @param id     stable id of the machine, material or tool, or the shape of a new tool; empty where there is none
 * @param name   what the shop calls it; empty where there is none
 * @param values what else the kind tells, as listed with it
 * @param and    what has to be changed besides; empty where this alone is enough
 */
public record WayOut(Kind kind, double value, String id, String name, List<Double> values, List<WayOut> and) {

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
        /**
         * A tool that is not owned: its length or diameter, mm; the id is its shape. Values: width mm (0 with one size), corner
         * radius mm (0 sharp), set angle in degrees (0 free), total die clearance mm (0 for a form), force kN with reserve, per
         * cent of what the strongest place that takes it carries.
         */
        TOOL,
        /** More of a tool that is needed at several angles: number on hand. */
        MORE,
        /** A forbidden tool allowed again. */
        ALLOW,
        /** The part turned on the sheet, degrees, counter-clockwise positive. */
        TURN_PART,
        /** Sharp or smaller inside corners of the opening or edge rounded: least radius, mm. */
        RADIUS,
        /** An opening made larger: least width, mm. */
        LARGER,
        /** Moved away from a neighbour, or the edge where the name is empty: by mm. Values: distance now and needed, mm. */
        APART,
        /** Drawn as one opening with the neighbour. */
        JOINED,
        /**
         * As drawn not by punching in this shop. Value: largest thickness that a machine takes, mm, where that is the cause, else
         * 0. Values: machines and new tools that were asked.
         */
        OTHER_PROCESS,
        /** Nothing found with one change or two. Values: machines and materials that were asked. */
        NONE,
        /** Not looked for: as many refusals of the part were looked at as one part gets. Value: how many. */
        NOT_ASKED
    }

    public WayOut {
        values = List.copyOf(values);
        and = List.copyOf(and);
    }

    /** One change. */
    public WayOut(Kind kind, double value, String id, String name) {
        this(kind, value, id, name, List.of(), List.of());
    }

    public static WayOut of(Kind kind, double value) {
        return new WayOut(kind, value, "", "");
    }

    /** This change and another one, both needed. */
    public WayOut and(WayOut second) {
        List<WayOut> both = new ArrayList<>(and);
        both.add(second);
        return new WayOut(kind, value, id, name, values, both);
    }

    /** Whether it says what to change, and not only that nothing was found. */
    public boolean found() {
        return kind.ordinal() < Kind.OTHER_PROCESS.ordinal();
    }

    /** In words, with the unit. */
    public String text(Locale locale) {
        ResourceBundle texts = texts(locale);
        String called = kind == Kind.TOOL ? texts.getString("SHAPE." + id)
                : kind == Kind.APART && name.isEmpty() ? texts.getString("EDGE") : name;
        List<Object> arguments = new ArrayList<>(List.of(value, called));
        arguments.addAll(values);
        String own = new MessageFormat(texts.getString(kind.name()), locale).format(arguments.toArray());
        return own + and.stream().map(w -> " " + texts.getString("AND") + " " + w.text(locale)).collect(Collectors.joining());
    }

    /** All of them as sentences; empty for none. */
    static String sentence(List<WayOut> ways, Locale locale) {
        String found = ways.stream().filter(WayOut::found).map(w -> w.text(locale)).collect(Collectors.joining("; "));
        String none = ways.stream().filter(w -> !w.found()).map(w -> w.text(locale)).collect(Collectors.joining(" "));
        String works = found.isEmpty() ? "" : texts(locale).getString("WAYS") + " " + found + ".";
        return (works + " " + none).strip();
    }

    private static ResourceBundle texts(Locale locale) {
        return ResourceBundle.getBundle("punchwright.engine.finding.ways", locale, WayOut.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}
