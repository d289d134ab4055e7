// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Map;

import punchwright.engine.drawing.UnitChoice.Ground;
import punchwright.engine.drawing.UnitChoice.Source;
import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Bounds;

/** Decides what a drawing unit is: as asked for, as stated, as marked, or guessed from the size with a finding. */
final class Units {

    private static final double INCH = 25.4;

    /** Values of $INSUNITS in mm (DXF Reference, "HEADER Section Group Codes"). */
    private static final Map<Integer, Double> STATED = Map.ofEntries(Map.entry(1, INCH), Map.entry(2, 304.8),
            Map.entry(3, 1609344.0), Map.entry(4, 1.0), Map.entry(5, 10.0), Map.entry(6, 1000.0), Map.entry(7, 1e6),
            Map.entry(8, INCH * 1e-6), Map.entry(9, INCH * 1e-3), Map.entry(10, 914.4), Map.entry(11, 1e-7), Map.entry(12, 1e-6),
            Map.entry(13, 1e-3), Map.entry(14, 100.0), Map.entry(15, 10000.0), Map.entry(16, 100000.0),
            Map.entry(21, 304.8006096012));

    private static final Map<Double, String> NAMES = Map.of(1.0, "mm", INCH, "inch", 10.0, "cm", 1000.0, "m", 304.8, "foot");

    /** A part whose longer side has fewer units than this is more likely drawn in inches [common practice, no source]. */
    private static final double SMALL_UNITS = 5;
    /**
     * The same where the drawing is marked inch based. The mark alone says little: it is the default of many programs that
     * draw in mm [common practice, no source].
     */
    private static final double SMALL_UNITS_MARKED_INCH = 12;
    /** A punched part is rarely longer than this in mm [common practice, no source: three times the longest usual sheet]. */
    private static final double LONGEST_PART_MM = 12000;

    private final RawDrawing raw;
    private final FindingCollector findings;
    private final double width;
    private final double height;

    private Units(RawDrawing raw, Bounds extent, FindingCollector findings) {
        this.raw = raw;
        this.findings = findings;
        this.width = extent.isEmpty() ? 0 : extent.width();
        this.height = extent.isEmpty() ? 0 : extent.height();
    }

    static UnitChoice choose(RawDrawing raw, Bounds extent, DrawingOptions options, FindingCollector findings) {
        Units units = new Units(raw, extent, findings);
        if (!Double.isNaN(options.mmPerUnit())) {
            return units.choice(options.mmPerUnit(), Source.ASKED_FOR, Ground.NONE, null);
        }
        Double stated = STATED.get(raw.unitCode());
        return stated != null ? units.stated(stated) : units.notStated();
    }

    private UnitChoice choice(double mmPerUnit, Source source, Ground ground, Finding finding) {
        if (finding != null) {
            findings.add(finding);
        }
        return new UnitChoice(mmPerUnit, source, ground, width, height, finding);
    }

    private UnitChoice stated(double mm) {
        boolean metricInch = mm == INCH && raw.measurement() == 1;
        boolean tooLong = Math.max(width, height) * mm > LONGEST_PART_MM;
        Ground ground = metricInch ? Ground.MARKED_METRIC : tooLong ? Ground.LONGER_THAN_ANY_SHEET : Ground.NONE;
        Finding doubt = ground == Ground.NONE ? null : Finding.of(DrawingReason.UNIT_DOUBTFUL, findings.subject(),
                NAMES.getOrDefault(mm, mm + " mm"), width * mm, height * mm, metricInch ? 0 : 1);
        return choice(mm, Source.STATED, ground, doubt);
    }

    private UnitChoice notStated() {
        double size = Math.max(width, height);
        if (raw.measurement() == 1) {
            return choice(1, Source.MARKED, Ground.MARKED_METRIC,
                    Finding.of(DrawingReason.UNIT_FROM_MEASUREMENT, findings.subject(), "mm", 0));
        }
        if (raw.measurement() == 0 && size > 0 && size < SMALL_UNITS_MARKED_INCH) {
            return choice(INCH, Source.MARKED, Ground.MARKED_INCH,
                    Finding.of(DrawingReason.UNIT_FROM_MEASUREMENT, findings.subject(), "inch", 1));
        }
        boolean small = size < SMALL_UNITS;
        return choice(small ? INCH : 1, Source.GUESSED, small ? Ground.SMALL_IN_MM : Ground.USUAL_SIZE_IN_MM,
                Finding.of(DrawingReason.UNIT_NOT_STATED, findings.subject(), small ? "inch" : "mm", size, small ? 1 : 0));
    }
}
