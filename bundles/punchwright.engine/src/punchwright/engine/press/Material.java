// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * A sheet material.
 *
 * @param id                  stable id
 * @param grade               name in the standard
 * @param group               group for clearance, life and smallest features
 * @param densityKgPerDm3     kg/dm3
 * @param tensileMinMPa       Rm, lower value
 * @param tensileMaxMPa       Rm, upper value
 * @param shearMPa            shear strength for press force
 * @param clearanceRule       which rule gives the die clearance
 * @param clearancePercent    total clearance in per cent of t, for PERCENT
 * @param lifeFactor          multiplies the hits between grinds, 1 = as the tool record says
 * @param minimumHoleFactor   smallest round hole as a multiple of t
 */
public record Material(String id, String grade, MaterialGroup group, double densityKgPerDm3, double tensileMinMPa,
        double tensileMaxMPa, double shearMPa, ClearanceRule clearanceRule, double clearancePercent, double lifeFactor,
        double minimumHoleFactor) {
}
