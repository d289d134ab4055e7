// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * Closed contours and open chains, in mm.
 *
 * @param loops        closed contours, each once, in the order of the drawing
 * @param openChains   what does not close
 * @param shapes       part shapes by nesting depth; none inside an outline that does not close
 * @param netAreaMm2   loops of even nesting depth less those of odd depth, in mm2
 * @param drawn        what the drawing holds before repairs
 */
public record ContourSet(List<Contour> loops, List<List<Segment>> openChains, List<Shape> shapes,
        double netAreaMm2, Measure drawn) {

    public ContourSet {
        loops = List.copyOf(loops);
        openChains = List.copyOf(openChains);
        shapes = List.copyOf(shapes);
    }
}
