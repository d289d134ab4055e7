// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

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
 * @param uncutLines   all lines that are not cut, with their meaning: marks, places of forms, bend lines, ignored and hidden
 *                     lines, filled areas; in mm
 * @param areaMm2      loops of even nesting depth less those of odd depth, in mm2
 * @param drawn        the same before repairs, as other readers count it
 * @param unit         the unit taken, how it was found and what speaks against it
 * @param layers       what lies on which layer and what the layer rules made of it, hidden ones too
 * @param texts        texts of the layers that are read
 * @param centreMarks  points of the layers that are read
 */
public record DrawingResult(String source, String acadVersion, double mmPerUnit, Map<String, Integer> entities,
        List<Contour> loops, List<List<Segment>> openChains, List<Shape> shapes, List<Finding> findings,
        List<UncutLine> uncutLines, double areaMm2, DrawnMeasure drawn, UnitChoice unit,
        List<LayerUse> layers, List<DrawnText> texts, List<CentreMark> centreMarks) {

    public DrawingResult {
        entities = Collections.unmodifiableMap(new TreeMap<>(entities));
        loops = List.copyOf(loops);
        openChains = List.copyOf(openChains);
        shapes = List.copyOf(shapes);
        findings = List.copyOf(findings);
        uncutLines = List.copyOf(uncutLines);
        layers = List.copyOf(layers);
        texts = List.copyOf(texts);
        centreMarks = List.copyOf(centreMarks);
    }

    /** Diameters of the loops drawn as circles or as arcs of one circle, in mm, rising. */
    public List<Double> circleDiametersMm() {
        return drawn.circleDiametersMm();
    }

    /** Length of all closed contours and open chains, in mm. */
    public double cutLengthMm() {
        return loops.stream().mapToDouble(Contour::lengthMm).sum()
                + openChains.stream().flatMap(List::stream).mapToDouble(Segment::lengthMm).sum();
    }
}
