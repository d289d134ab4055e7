// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/** Which published rule gives the die clearance. */
public enum ClearanceRule {
    /** Oehler/Kaiser: u = c t sqrt(tau/10) per side, c = 0.01, from memory. */
    OEHLER_KAISER,
    /** Groover after ASM/SME: allowance a times t per side by material, from memory. */
    ALLOWANCE,
    /** Total clearance as a percentage of thickness, kept by the shop. */
    PERCENT
}
