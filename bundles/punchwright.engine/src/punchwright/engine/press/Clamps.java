// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * The clamps along the sheet's edge at y = 0.
 *
 * @param count          clamps fitted
 * @param widthMm        along x
 * @param depthMm        how far a clamp covers the sheet in y
 * @param deadZoneMm     distance to keep between a hit's tool and a clamp
 * @param minCenterMm    least x of a clamp centre from the carriage's zero
 * @param maxCenterMm    largest x of a clamp centre from the carriage's zero
 * @param minSpacingMm   least distance between two clamp centres
 */
public record Clamps(int count, double widthMm, double depthMm, double deadZoneMm, double minCenterMm, double maxCenterMm,
        double minSpacingMm) {
}
