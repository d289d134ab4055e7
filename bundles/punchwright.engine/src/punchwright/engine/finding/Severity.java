// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

/** How grave a finding is. */
public enum Severity {
    /** The plan cannot be made or must not be run. */
    ERROR,
    /** The plan can be run; someone must look first. */
    WARNING,
    /** Worth knowing: a repair, a choice, a guess. */
    NOTE
}
