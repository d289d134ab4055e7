// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;
import java.util.OptionalDouble;

/**
 * General tolerances for steel stampings by classes f, m, g and sg of DIN 6930-2.
 *
 * <p>The standard's values are not in this program: a shop that has bought it enters the rows it uses. Symbols: nominal size
 * and thickness [mm], each row valid over {@code above} up to and including {@code upTo}. Which table: 1 lengths, 2 radii, 3
 * angles of flat parts; 4 lengths, 5 radii of formed parts; 6 straightness. Range: steel, not fine-blanked. Source: DIN
 * 6930-2:2011-10, contents and scope. An answer outside the rows is empty, never a guess. Worked example: one row above 0 up to
 * 6 mm, t above 0 up to 1 mm, with 0.1 gives 0.1 for 6 mm in t 1 and nothing for 6.1 mm.
 */
public final class StampingTolerance {

    private final List<Row> rows;

    /** @param rows as entered from the standard, first fit counts */
    public StampingTolerance(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /** One row of a table, all in mm. */
    public record Row(double sizeAboveMm, double sizeUpToMm, double thicknessAboveMm, double thicknessUpToMm,
            double plusMinusMm) {

        boolean holds(double sizeMm, double thicknessMm) {
            return sizeMm > sizeAboveMm && sizeMm <= sizeUpToMm && thicknessMm > thicknessAboveMm
                    && thicknessMm <= thicknessUpToMm;
        }
    }

    /** Plus or minus in mm; empty where no row is entered for it. */
    public OptionalDouble plusMinusMm(double sizeMm, double thicknessMm) {
        return rows.stream().filter(r -> r.holds(sizeMm, thicknessMm)).mapToDouble(Row::plusMinusMm).findFirst();
    }

    /** Number of the table for a length: 1 on a flat part, 4 on a formed one. */
    public static int lengthTable(boolean formed) {
        return formed ? 4 : 1;
    }
}
