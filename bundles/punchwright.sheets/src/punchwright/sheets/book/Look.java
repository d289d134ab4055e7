// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

/** Looks of cells: paper and graphite, one accent (petrol). */
public enum Look {
    TITLE, SUBTITLE, SECTION, HEAD, HEAD_RIGHT, FIELD, VALUE, VALUE_BOLD, TEXT, TEXT_WRAP, TEXT_CENTER, TEXT_BOLD, NOTE,
    /** Whole number. */
    COUNT,
    /** Numbers with one to four decimals. */
    DEC1, DEC2, DEC3, DEC4,
    /** A number with as many decimals as it has, up to six. */
    GENERAL,
    /** Share of 1 shown in per cent. */
    PERCENT,
    /** Money with cents, with four decimals, as a total. */
    MONEY, MONEY4, MONEY_TOTAL, MONEY4_TOTAL,
    /** An input to be changed, as number or as money. */
    INPUT, INPUT_MONEY,
    DATE, BLANK_BOX;

    boolean money() {
        return name().contains("MONEY");
    }
}
