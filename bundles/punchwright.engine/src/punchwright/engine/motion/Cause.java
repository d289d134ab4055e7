// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

/** What the time goes to. */
public enum Cause {
    LOAD, MOVE, SETTLE, STROKE, NIBBLE, TOOL_CHANGE, HAND_CHANGE, INSERT_CHANGE, TURN_TOOL, REPOSITION, TURN_OVER, PART_REMOVAL,
    UNLOAD
}
