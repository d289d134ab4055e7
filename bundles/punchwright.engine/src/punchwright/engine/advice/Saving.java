// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

/**
 * Yearly difference that an addition makes, today less then: above 0 is saved. Currency a year unless said.
 *
 * @param perYear      all of it: press time, wear, web and changes as the choice of tools weighs them, and set-ups
 * @param pressHours   press time without changes, hours a year
 * @param press        that time at the machine's rate
 * @param wear         wear of tools
 * @param setUps       setting up tools
 * @param rest         tool changes, wider webs and slivers
 * @param depreciation the addition's own wear that its price makes: a cost without payment, added back for the payback
 */
public record Saving(double perYear, double pressHours, double press, double wear, double setUps, double rest,
        double depreciation) {

    public static final Saving NONE = new Saving(0, 0, 0, 0, 0, 0, 0);
}
