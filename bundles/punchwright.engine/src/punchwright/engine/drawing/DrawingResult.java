// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * What a drawing gave.
 *
 * @param source       name of the file or parameter set
 * @param acadVersion  value of $ACADVER, empty where the file has none
 * @param mmPerUnit    factor used from drawing units to mm
 * @param entities     counted entities by type, sorted by name
 * @param loops        every closed contour found, in mm
 * @param openChains   chains that do not close, in mm
 * @param shapes       part shapes: outer contours with their holes, by nesting depth, in mm
 * @param findings     repairs, guesses and refusals
 */
public record DrawingResult(String source, String acadVersion, double mmPerUnit, Map<String, Integer> entities,
        List<Contour> loops, List<List<Segment>> openChains, List<Shape> shapes, List<Finding> findings) {
}
