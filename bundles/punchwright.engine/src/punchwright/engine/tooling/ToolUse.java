// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.press.Place;

/**
 * One tool standing ready on the machine for a plan.
 *
 * @param number        balloon number on screens and sheets, from 1
 * @param tool          which tool
 * @param place         which place; null when it is set by hand during the run
 * @param holder        which multi-tool holder it sits in; null when it stands alone
 * @param insert        position in the holder from 1; 0 when alone
 * @param turning       whether it can be set to any angle here
 * @param setAngleDeg   fixed angle where it does not turn
 */
public record ToolUse(int number, Tool tool, Place place, Holder holder, int insert, boolean turning, double setAngleDeg) {
}
