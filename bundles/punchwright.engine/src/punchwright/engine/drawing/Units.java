// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Map;

import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Bounds;

/** Decides what a drawing unit is: as asked for, as stated, as marked, or guessed from the size with a finding. */
final class Units {

    private static final double INCH = 25.4;

    /** Values of $INSUNITS in mm (DXF Reference, "HEADER Section Group Codes"). */
    private static final Map<Integer, Double> STATED = Map.ofEntries(Map.entry(1, INCH), Map.entry(2, 304.8),
            Map.entry(3, 1609344.0), Map.entry(4, 1.0), Map.entry(5, 10.0), Map.entry(6, 1000.0), Map.entry(7, 1e6),
            Map.entry(8, INCH * 1e-6), Map.entry(9, INCH * 1e-3), Map.entry(10, 914.4), Map.entry(11, 1e-7), Map.entry(12, 1e-6),
            Map.entry(13, 1e-3), Map.entry(14, 100.0), Map.entry(15, 10000.0), Map.entry(16, 100000.0), Map.entry(21, 304.8006096012));

    private static final Map<Double, String> NAMES = Map.of(1.0, "mm", INCH, "inch", 10.0, "cm", 1000.0, "m", 304.8, "foot");

    /** A part whose longer side has fewer units than this is more likely drawn in inches [common practice, no source]. */
    private static final double SMALL_UNITS = 5;
    /** A punched part is rarely longer than this in mm [common practice, no source: three times the longest usual sheet]. */
    private static final double LONGEST_PART_MM = 12000;

    private Units() {
    }

    static double mmPerUnit(RawDrawing raw, Bounds extent, DrawingOptions options, FindingCollector findings) {
        if (!Double.isNaN(options.mmPerUnit())) {
            return options.mmPerUnit();
        }
        Double stated = STATED.get(raw.unitCode());
        if (stated != null) {
            doubt(stated, raw, extent, findings);
            return stated;
        }
        double size = extent.isEmpty() ? 0 : Math.max(extent.width(), extent.height());
        if (raw.measurement() == 1) {
            findings.add(DrawingReason.UNIT_FROM_MEASUREMENT, "mm", "metric");
            return 1;
        }
        boolean small = size < SMALL_UNITS;
        String why = small ? "a part this small in mm is unlikely" : "this is a usual size in mm";
        findings.add(DrawingReason.UNIT_NOT_STATED, small ? "inch" : "mm", size, why);
        return small ? INCH : 1;
    }

    private static void doubt(double stated, RawDrawing raw, Bounds extent, FindingCollector findings) {
        double width = extent.isEmpty() ? 0 : extent.width() * stated;
        double height = extent.isEmpty() ? 0 : extent.height() * stated;
        String name = NAMES.getOrDefault(stated, stated + " mm");
        if (stated == INCH && raw.measurement() == 1) {
            findings.add(DrawingReason.UNIT_DOUBTFUL, name, width, height, "the drawing is marked metric");
        } else if (Math.max(width, height) > LONGEST_PART_MM) {
            findings.add(DrawingReason.UNIT_DOUBTFUL, name, width, height, "the part would be longer than any sheet");
        }
    }
}
