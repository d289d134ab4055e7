// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/** Limits of one axis: speed in mm/s and acceleration (also braking) in mm/s2, both above 0. */
public record Axis(double maxSpeedMmPerS, double accelerationMmPerS2) {
}
