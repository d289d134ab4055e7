// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A curve in space in drawing units; every kind maps to its own kind under an affine map. */
public sealed interface RawCurve permits RawLine, RawArc, RawRound, RawSpline {

    RawCurve mapped(Frame frame);

    /** How much work it is, compared with a line. */
    default int weight() {
        return 1;
    }
}
