// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/**
 * The words of a text without its formatting codes: "%%" codes of all texts, and for several lines the codes that begin
 * with a backslash, braces and the caret (DXF Reference, "TEXT" and "MTEXT").
 */
final class TextContent {

    /** Codes that run to the next semicolon: alignment, colour, font, height, width, slant, spacing, paragraph. */
    private static final String WITH_VALUE = "ACcFfHQTWp";
    /** Codes without a value: line above, below and through, on and off. */
    private static final String SWITCHES = "LlOoKkX";

    private final String raw;
    private final StringBuilder out = new StringBuilder();
    private int at;

    private TextContent(String raw) {
        this.raw = raw;
    }

    static String ofLine(String raw) {
        if (!raw.contains("%%")) {
            return raw;
        }
        TextContent content = new TextContent(raw);
        while (content.at < raw.length()) {
            if (!content.percent()) {
                content.out.append(raw.charAt(content.at++));
            }
        }
        return content.out.toString();
    }

    static String ofLines(String raw) {
        TextContent content = new TextContent(raw);
        while (content.at < raw.length()) {
            if (!content.percent()) {
                content.character();
            }
        }
        return content.out.toString().strip();
    }

    /** Takes a "%%" code when one stands here. */
    private boolean percent() {
        if (!raw.startsWith("%%", at) || at + 2 >= raw.length()) {
            return false;
        }
        char c = Character.toLowerCase(raw.charAt(at + 2));
        switch (c) {
            case 'd' -> out.append('\u00B0');
            case 'c' -> out.append('\u00D8');
            case 'p' -> out.append('\u00B1');
            case '%' -> out.append('%');
            case 'u', 'o', 'k' -> { }
            default -> {
                return number();
            }
        }
        at += 3;
        return true;
    }

    /** "%%" and three digits: a character by its number. */
    private boolean number() {
        if (at + 5 > raw.length() || !raw.substring(at + 2, at + 5).chars().allMatch(d -> d >= '0' && d <= '9')) {
            return false;
        }
        out.append((char) Integer.parseInt(raw.substring(at + 2, at + 5)));
        at += 5;
        return true;
    }

    private void character() {
        char c = raw.charAt(at++);
        if (c == '\\' && at < raw.length()) {
            code(raw.charAt(at++));
        } else if (c == '^' && at < raw.length()) {
            control(raw.charAt(at++));
        } else if (c != '{' && c != '}') {
            out.append(c);
        }
    }

    private void code(char c) {
        if (c == 'P' || c == 'N') {
            out.append('\n');
        } else if (c == '~') {
            out.append(' ');
        } else if (c == 'S') {
            out.append(toSemicolon().replace('^', '/').replace('#', '/').replace(" ", ""));
        } else if (WITH_VALUE.indexOf(c) >= 0) {
            toSemicolon();
        } else if (SWITCHES.indexOf(c) < 0) {
            out.append(c);
        }
    }

    private void control(char c) {
        switch (c) {
            case 'J' -> out.append('\n');
            case 'I' -> out.append(' ');
            case 'M' -> { }
            default -> out.append('^').append(c == ' ' ? "" : c);
        }
    }

    /** Without a semicolon the code has no value and nothing is passed over. */
    private String toSemicolon() {
        int end = raw.indexOf(';', at);
        if (end < 0) {
            return "";
        }
        String value = raw.substring(at, end);
        at = end + 1;
        return value;
    }
}
