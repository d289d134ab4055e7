// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * Least-cost lot [pieces].
 *
 * <p>Formula (Andler 1929, Harris 1913): {@code q = sqrt(2 D S / h)} with demand D a year, S money a set-up, h money to hold
 * a piece a year. With finite production rate (Stefanic-Allmayer): {@code h} is multiplied by {@code 1 - d/x}, d used and x
 * made a day. At q, set-up and holding cost a year are equal. Range: D and S 0 or more, h above 0, d below x. Source:
 * BWL-Lerntipps, "Andlersche Formel"; Haufe, "Optimale Losgröße"; both examples are in the tests.
 */
public final class LotSize {

    private LotSize() {
    }

    /** Least-cost lot when a lot is there at once. */
    public static double harris(double demandPerYear, double setUpCost, double holdingPerPieceYear) {
        positive("holding cost of a piece in a year", holdingPerPieceYear);
        return Math.sqrt(2 * notNegative("demand in a year", demandPerYear) * notNegative("set-up cost", setUpCost)
                / holdingPerPieceYear);
    }

    /** Least-cost lot when pieces come in while others are used: {@code usedPerDay} below {@code madePerDay}. */
    public static double finiteRate(double demandPerYear, double setUpCost, double holdingPerPieceYear, double usedPerDay,
            double madePerDay) {
        positive("pieces made a day", madePerDay);
        if (notNegative("pieces used a day", usedPerDay) >= madePerDay) {
            throw new IllegalArgumentException("pieces used a day (" + usedPerDay + ") must be below pieces made a day ("
                    + madePerDay
                    + "); without stock there is no least-cost lot");
        }
        return harris(demandPerYear, setUpCost, holdingPerPieceYear * (1 - usedPerDay / madePerDay));
    }

    /** Set-up cost a year with lots of {@code lot} pieces, money. */
    public static double setUpCostPerYear(double demandPerYear, double setUpCost, double lot) {
        return demandPerYear / positive("lot", lot) * setUpCost;
    }

    /** Holding cost a year with lots of {@code lot} pieces, half of which lie there on average, money. */
    public static double holdingCostPerYear(double lot, double holdingPerPieceYear) {
        return lot / 2 * holdingPerPieceYear;
    }

    private static double positive(String what, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be above 0");
        }
        return value;
    }

    private static double notNegative(String what, double value) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(what + " is " + value + "; it must be 0 or more");
        }
        return value;
    }
}
