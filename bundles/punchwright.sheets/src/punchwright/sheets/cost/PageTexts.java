// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import punchwright.sheets.book.SheetPen;

/** Header and footer of the roll-up's sheets, and its currency. */
record PageTexts(String owner, String title, String footer, String pageWord, String currency) {

    void apply(SheetPen pen, int titleFrom, int titleTo) {
        pen.page(true, titleFrom, titleTo, owner, title, footer, pageWord);
    }
}
