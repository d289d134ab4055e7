// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;

import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Cell styles of one workbook, each made once. */
final class Styles {

    private static final byte[] PETROL = opaque(0x0B4F5C);
    private static final byte[] PAPER = opaque(0xE9EEEF);
    private static final byte[] ENTRY = opaque(0xFFF6DD);
    private static final byte[] GREY = opaque(0x555B60);
    private static final byte[] RULE = opaque(0xB4BCC0);
    private static final String FAMILY = "Arial";
    /** Room at the right of numbers, twice the width of a bracket; an indent is not drawn alike by all programs. */
    private static final String SPACE = "_)_)";

    private final XSSFWorkbook book;
    private final String currency;
    private final Map<Look, XSSFCellStyle> styles = new EnumMap<>(Look.class);
    private final Map<Short, XSSFCellStyle> quoted = new HashMap<>();

    Styles(XSSFWorkbook book, String currency) {
        this.book = book;
        this.currency = currency.replace("\"", "");
        XSSFFont normal = book.getFontAt(0);
        normal.setFontName(FAMILY);
        normal.setFontHeightInPoints((short) 9);
    }

    /** Alpha, red, green, blue: the schema wants four bytes. */
    private static byte[] opaque(int rgb) {
        return new byte[] {(byte) 0xFF, (byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    }

    XSSFCellStyle of(Look look) {
        return styles.computeIfAbsent(look, this::make);
    }

    /** The same style, kept as text even when the person edits the cell. */
    XSSFCellStyle quoted(XSSFCellStyle style) {
        return quoted.computeIfAbsent(style.getIndex(), i -> {
            XSSFCellStyle copy = book.createCellStyle();
            copy.cloneStyleFrom(style);
            copy.setQuotePrefixed(true);
            return copy;
        });
    }

    private XSSFCellStyle make(Look look) {
        XSSFCellStyle style = book.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setFont(font(look));
        style.setDataFormat(book.createDataFormat().getFormat(format(look)));
        align(style, look);
        frame(style, look);
        return style;
    }

    private XSSFFont font(Look look) {
        XSSFFont font = book.createFont();
        font.setFontName(FAMILY);
        double size = switch (look) {
            case TITLE -> 16;
            case SUBTITLE -> 11;
            case SECTION -> 10.5;
            case FIELD -> 7;
            case NOTE -> 8;
            default -> 9;
        };
        font.setFontHeight(size);
        font.setBold(switch (look) {
            case TITLE, SECTION, HEAD, HEAD_RIGHT, TEXT_BOLD, VALUE_BOLD, MONEY_TOTAL, MONEY4_TOTAL -> true;
            default -> false;
        });
        if (look == Look.TITLE || look == Look.SECTION) {
            font.setColor(new XSSFColor(PETROL, null));
        } else if (look == Look.FIELD || look == Look.NOTE || look == Look.SUBTITLE) {
            font.setColor(new XSSFColor(GREY, null));
        }
        return font;
    }

    private String format(Look look) {
        return switch (look) {
            case COUNT -> "#,##0" + SPACE;
            case DEC1 -> "#,##0.0" + SPACE;
            case DEC2 -> "#,##0.00" + SPACE;
            case DEC3 -> "#,##0.000" + SPACE;
            case DEC4 -> "#,##0.0000" + SPACE;
            case GENERAL, INPUT -> "#,##0.######" + SPACE;
            case PERCENT -> "0.0%" + SPACE;
            case MONEY, MONEY_TOTAL, INPUT_MONEY -> "#,##0.00\" " + currency + "\"" + SPACE;
            case MONEY4, MONEY4_TOTAL -> "#,##0.0000\" " + currency + "\"" + SPACE;
            case DATE -> "yyyy\\-mm\\-dd";
            default -> "General";
        };
    }

    private void align(XSSFCellStyle style, Look look) {
        switch (look) {
            case TEXT_WRAP, NOTE, HEAD, HEAD_RIGHT -> style.setWrapText(true);
            default -> style.setWrapText(false);
        }
        if (look == Look.NOTE) {
            style.setVerticalAlignment(VerticalAlignment.TOP);
        }
        boolean number = look.money() || switch (look) {
            case COUNT, DEC1, DEC2, DEC3, DEC4, GENERAL, PERCENT, INPUT, HEAD_RIGHT -> true;
            default -> false;
        };
        style.setAlignment(number ? HorizontalAlignment.RIGHT
                : look == Look.TEXT_CENTER ? HorizontalAlignment.CENTER : HorizontalAlignment.LEFT);
        if (look == Look.HEAD_RIGHT) {
            style.setIndention((short) 1);
        }
    }

    private void frame(XSSFCellStyle style, Look look) {
        switch (look) {
            case TITLE, SUBTITLE, NOTE -> { }
            case SECTION -> line(style, BorderStyle.MEDIUM, PETROL);
            case HEAD, HEAD_RIGHT -> {
                fill(style, PAPER);
                line(style, BorderStyle.THIN, GREY);
            }
            case FIELD, VALUE, VALUE_BOLD -> { }
            case INPUT, INPUT_MONEY -> {
                fill(style, ENTRY);
                line(style, BorderStyle.HAIR, RULE);
            }
            case MONEY_TOTAL, MONEY4_TOTAL -> {
                line(style, BorderStyle.THIN, GREY);
                style.setBorderTop(BorderStyle.THIN);
            }
            case BLANK_BOX -> {
                line(style, BorderStyle.THIN, GREY);
                style.setBorderLeft(BorderStyle.THIN);
                style.setBorderRight(BorderStyle.THIN);
                style.setBorderTop(BorderStyle.THIN);
            }
            default -> line(style, BorderStyle.HAIR, RULE);
        }
    }

    private static void line(XSSFCellStyle style, BorderStyle border, byte[] colour) {
        style.setBorderBottom(border);
        style.setBottomBorderColor(new XSSFColor(colour, null));
    }

    private static void fill(XSSFCellStyle style, byte[] colour) {
        style.setFillForegroundColor(new XSSFColor(colour, null));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }
}
