// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * What of a machine's record concerns forms that stand.
 *
 * @param upMm         clear height over the sheet under stripper and head while the sheet travels, mm; 0: not given
 * @param downMm       clear depth under the sheet over table and dies while it travels, mm; 0: not given
 * @param holdDownMm   diameter about the tool axis on which the sheet is held down during a reposition, mm; 0: not given
 */
public record FormClearance(double upMm, double downMm, double holdDownMm) {

    public static final FormClearance NOT_GIVEN = new FormClearance(0, 0, 0);
}
