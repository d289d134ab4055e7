// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolUse;

/**
 * One hit on the sheet.
 *
 * @param id         from 0, unique on the layout
 * @param use        tool standing ready
 * @param at         tool axis in sheet coordinates, mm
 * @param angleDeg   tool angle on the sheet
 * @param role       what it is for
 * @param operation  number of the operation in its part
 * @param placement  index of the placement on the layout
 */
public record SheetHit(int id, ToolUse use, Point at, double angleDeg, HitRole role, int operation, int placement) {
}
