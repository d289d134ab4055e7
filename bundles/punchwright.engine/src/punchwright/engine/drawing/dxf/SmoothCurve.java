// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import punchwright.engine.geometry.Point;

/** A plane curve without corners over t from 0 to 1, in mm. */
interface SmoothCurve {

    Point at(double t);

    /** Direction of travel, any length. */
    Point derivativeAt(double t);
}
