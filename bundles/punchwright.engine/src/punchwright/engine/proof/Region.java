// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

/** An area about the tool axis that can say which stretches of a straight line lie in it. */
interface Region {

    /** Adds the stretches, as shares from 0 to 1, of the way from (x0, y0) to (x1, y1) that lie inside. */
    void clip(double x0, double y0, double x1, double y1, Spans spans);

    /** The same area turned about the axis. */
    Region turned(double cos, double sin);
}
