// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.theme;

import org.eclipse.swt.graphics.RGB;

/**
 * The named colours of pictures and states. Each is a colour definition of the workbench theme under the same key, so that a
 * theme or a person can change it; the value here is what stands when no theme does.
 */
public enum Ink {
    /** Ground of every picture. */
    PAPER("paper", 0xFB, 0xFA, 0xF7),
    /** The sheet on it. */
    SHEET("sheet", 0xE4, 0xE7, 0xE8),
    /** Inside of a part. */
    PART("part", 0xF4, 0xF5, 0xF4),
    /** Thick lines: edges of parts and sheets. */
    GRAPHITE("graphite", 0x2B, 0x30, 0x34),
    /** Thin lines: dimensions, leaders, centre lines, hatching. */
    PENCIL("pencil", 0x6B, 0x74, 0x7A),
    /** What is there but does not count now. */
    FAINT("faint", 0xBF, 0xC5, 0xC8),
    /** The one accent: what is selected or acts. */
    ACCENT("accent", 0x00, 0x6D, 0x77),
    /** Errors. */
    ERROR("error", 0xB3, 0x3A, 0x00),
    /** Warnings. */
    WARNING("warning", 0x9A, 0x66, 0x00),
    /** Notes. */
    NOTE("note", 0x00, 0x5A, 0x8C),
    /** Tools one to eight: the qualitative palette of Okabe and Ito, "Color Universal Design", 2008; then again with dashes. */
    TOOL_1("tool1", 0x00, 0x72, 0xB2),
    /** Vermillion. */
    TOOL_2("tool2", 0xD5, 0x5E, 0x00),
    /** Bluish green. */
    TOOL_3("tool3", 0x00, 0x9E, 0x73),
    /** Reddish purple. */
    TOOL_4("tool4", 0xCC, 0x79, 0xA7),
    /** Orange. */
    TOOL_5("tool5", 0xE6, 0x9F, 0x00),
    /** Sky blue. */
    TOOL_6("tool6", 0x56, 0xB4, 0xE9),
    /** Black. */
    TOOL_7("tool7", 0x00, 0x00, 0x00),
    /** Yellow. */
    TOOL_8("tool8", 0xF0, 0xE4, 0x42);

    private static final String PREFIX = "punchwright.ui.ink.";
    /** Number of tool colours before they repeat with another mark. */
    public static final int TOOL_COLOURS = 8;

    private final String key;
    private final RGB plain;

    Ink(String key, int red, int green, int blue) {
        this.key = PREFIX + key;
        this.plain = new RGB(red, green, blue);
    }

    /** Key in the workbench theme. */
    public String key() {
        return key;
    }

    /** Value without a theme. */
    public RGB plain() {
        return plain;
    }

    /** Colour of the tool with this balloon number, from 1. */
    public static Ink tool(int balloon) {
        return values()[TOOL_1.ordinal() + Math.floorMod(balloon - 1, TOOL_COLOURS)];
    }

    /** How often the palette has been used up before this balloon number: 0 plain line, 1 dashed, 2 dotted, and so on. */
    public static int toolRound(int balloon) {
        return Math.floorDiv(balloon - 1, TOOL_COLOURS);
    }
}
