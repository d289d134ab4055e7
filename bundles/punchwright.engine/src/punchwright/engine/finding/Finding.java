// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.ResourceBundle;

import punchwright.engine.geometry.Point;

/**
 * An error, warning or note with a typed reason, the object it concerns and, where there is one, a place.
 *
 * @param reason    typed reason; decides code, severity and texts
 * @param subject   the object concerned, as a person names it ("part BR-104, feature 7")
 * @param arguments values for the text, numbers in the unit that the text prints
 * @param place     where, in mm in the subject's own coordinates; null where there is no place
 * @param waysOut   what makes it go away, found by asking the same rule again; empty where nothing was found or asked
 */
public record Finding(Reason reason, String subject, List<Object> arguments, Point place, List<WayOut> waysOut) {

    public Finding {
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(subject, "subject");
        arguments = List.copyOf(arguments);
        waysOut = List.copyOf(waysOut);
    }

    /** A finding whose ways out nobody has computed. */
    public Finding(Reason reason, String subject, List<Object> arguments, Point place) {
        this(reason, subject, arguments, place, List.of());
    }

    /** The same finding with computed ways out. */
    public Finding with(List<WayOut> ways) {
        return new Finding(reason, subject, arguments, place, ways);
    }

    /** A finding without a place. */
    public static Finding of(Reason reason, String subject, Object... arguments) {
        return new Finding(reason, subject, List.of(arguments), null);
    }

    /** A finding at a place in mm. */
    public static Finding at(Point place, Reason reason, String subject, Object... arguments) {
        return new Finding(reason, subject, List.of(arguments), place);
    }

    /** The same finding with its subject told apart by where it stands, as "DC01 2.00 mm, layout 1". */
    public Finding within(String whole) {
        return new Finding(reason, whole + ", " + subject, arguments, place, waysOut);
    }

    public Severity severity() {
        return reason.severity();
    }

    public boolean isError() {
        return reason.severity() == Severity.ERROR;
    }

    public String code() {
        return reason.code();
    }

    public Optional<Point> placeIfAny() {
        return Optional.ofNullable(place);
    }

    /** What is the matter, with values and units, in English. */
    public String message() {
        return message(Locale.ENGLISH);
    }

    /** The way out, in English, with the computed ones and their values; empty when there is none. */
    public String remedy() {
        return remedy(Locale.ENGLISH);
    }

    public String message(Locale locale) {
        return text("message", locale);
    }

    /** General advice is left out where computed ways say what to do. */
    public String remedy(Locale locale) {
        boolean told = !waysOut.isEmpty() && waysOut.stream().allMatch(WayOut::found);
        return told ? nearest(locale) : (text("remedy", locale) + " " + nearest(locale)).strip();
    }

    /** The computed ways out as sentences of their own; empty where there are none. */
    public String nearest(Locale locale) {
        return WayOut.sentence(waysOut, locale);
    }

    private String text(String kind, Locale locale) {
        Class<?> home = reason.getClass();
        ResourceBundle texts = ResourceBundle.getBundle(home.getPackageName() + ".findings", locale, home.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        String key = reason.code() + "." + kind;
        return texts.containsKey(key) ? new MessageFormat(texts.getString(key), locale).format(arguments.toArray()) : "";
    }
}
