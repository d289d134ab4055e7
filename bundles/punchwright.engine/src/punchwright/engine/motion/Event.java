// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

/** One named stretch of time; {@code hitId} is the hit it belongs to, or -1. */
public record Event(double startS, double durationS, Cause cause, int hitId) {
}
