// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Where a tool or holder sits on a machine.
 *
 * @param id                   number or name on the machine
 * @param maxToolDiameterMm    largest circumscribed diameter of a tool's punch shape, or of a holder
 * @param forceLimitN          largest punching force here
 * @param turns                whether the tool can be turned to any angle
 * @param turnAccuracyMm       position error that turning adds, 0 where fixed
 * @param takesHolder          whether a multi-tool holder fits
 */
public record Place(String id, double maxToolDiameterMm, double forceLimitN, boolean turns, double turnAccuracyMm,
        boolean takesHolder) {
}
