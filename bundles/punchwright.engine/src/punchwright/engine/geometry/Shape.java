// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.List;

/**
 * The flat shape of one part: one outer contour (counter-clockwise) and any number of holes (clockwise), in mm.
 */
public record Shape(Contour outer, List<Contour> holes) {

    public Shape {
        outer = outer.oriented(true);
        holes = holes.stream().map(h -> h.oriented(false)).toList();
    }

    /** Outer less holes, in mm2. */
    public double areaMm2() {
        return outer.areaMm2() - holes.stream().mapToDouble(Contour::areaMm2).sum();
    }

    /** Length of all edges, in mm. */
    public double cutLengthMm() {
        return outer.lengthMm() + holes.stream().mapToDouble(Contour::lengthMm).sum();
    }

    public Bounds bounds() {
        return outer.bounds();
    }

    public Shape moved(Pose pose) {
        return new Shape(outer.moved(pose), holes.stream().map(h -> h.moved(pose)).toList());
    }
}
