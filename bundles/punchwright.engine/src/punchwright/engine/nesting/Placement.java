// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.geometry.Pose;

/** One part on a sheet: {@code pose} takes part coordinates to sheet coordinates (origin at the clamped corner). */
public record Placement(String partId, Pose pose) {
}
