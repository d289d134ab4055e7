// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.ToolShape;

/**
 * A form that the drawing asks for, on the sheet.
 *
 * @param part      number of its part from 0, in the order of the job's parts
 * @param shape     kind of form
 * @param at        its centre in sheet coordinates, mm
 * @param angleDeg  direction of its length on the sheet
 * @param lengthMm  its length, mm; 0 where it is that of its tool
 */
public record ProofForm(int part, ToolShape shape, Point at, double angleDeg, double lengthMm) {

    /** As long as its tool. */
    public ProofForm(int part, ToolShape shape, Point at, double angleDeg) {
        this(part, shape, at, angleDeg, 0);
    }
}
