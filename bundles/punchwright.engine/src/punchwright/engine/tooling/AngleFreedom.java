// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/** How a tool may be set about its axis. */
public enum AngleFreedom {
    /** Only its fixed angle. */
    FIXED,
    /** Quarter turns of its fixed angle, by its keys. */
    QUARTER,
    /** Any angle, in a place that turns. */
    ANY
}
