// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Equipment of a machine that the rules of the press ask for.
 *
 * @param lubrication whether the sheet or tool is oiled
 * @param slugSuction whether slugs are drawn down into the die
 */
public record MachineOptions(boolean lubrication, boolean slugSuction) {

    public static final MachineOptions NONE = new MachineOptions(false, false);

    /** Oil glues a slug to the punch where nothing draws it down. */
    public boolean oilWithoutSuction() {
        return lubrication && !slugSuction;
    }
}
