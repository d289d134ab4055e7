// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

/** What can be bought. */
public enum AdditionKind {
    /** A tool of a shape and size not owned. */
    TOOL,
    /** A die of another clearance for a tool owned. */
    DIE,
    /** One more of a tool owned. */
    SECOND,
    /** A multi-tool holder. */
    HOLDER,
    /** A machine option: a turning place, more places, an automatic change. */
    OPTION
}
