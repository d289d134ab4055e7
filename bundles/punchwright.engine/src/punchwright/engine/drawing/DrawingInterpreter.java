// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.drawing.contour.ContourBuilder;
import punchwright.engine.drawing.contour.ContourSet;
import punchwright.engine.drawing.contour.Measure;
import punchwright.engine.drawing.contour.Piece;
import punchwright.engine.drawing.dxf.DrawnCurve;
import punchwright.engine.drawing.dxf.PlaneCurves;
import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.drawing.dxf.Scaling;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Segment;

/** From curves in drawing units to contours and shapes in mm. */
final class DrawingInterpreter {

    /** Ellipses and splines become arcs that lie this close, in mm: well below the 0.01 mm of a size. */
    private static final double CURVE_ERROR_MM = 0.001;
    /** Beyond this distance from the origin, in mm, the last digits of a double get too coarse for areas. */
    private static final double FAR_MM = 1e6;
    /** Lines and arcs that a heap below 1 GB holds with all that is made of them. */
    private static final int MOST_SEGMENTS = 2_500_000;
    /** Arcs that ellipses and splines become: a number for copies out of blocks, and so many for each in the drawing itself. */
    private static final int MOST_APPROXIMATED = 200_000;
    private static final int MOST_APPROXIMATED_EACH = 100;

    /** Curves made on all processors before they are counted; ellipses and splines wait for the count, they may be large. */
    private static final int AT_ONCE = 1 << 14;
    private static final Piece TO_BE_MADE = new Piece(List.of(), false, false);

    private final RawDrawing raw;
    private final DrawingOptions options;
    private final FindingCollector findings;
    private final LayerCounts counts = new LayerCounts();
    private int upright;
    private int made;
    private final int mostApproximated;
    private int approximated;

    DrawingInterpreter(RawDrawing raw, DrawingOptions options, FindingCollector findings) {
        this.raw = raw;
        this.options = options;
        this.findings = findings;
        this.mostApproximated = MOST_APPROXIMATED + MOST_APPROXIMATED_EACH
                * (raw.entities().getOrDefault("SPLINE", 0) + raw.entities().getOrDefault("ELLIPSE", 0));
    }

    /** @throws DrawingException when the curves make more lines and arcs than can be looked at */
    DrawingResult result() throws DrawingException {
        LayerSorting layers = new LayerSorting(raw, options);
        layers.report(findings);
        Bounds extent = extent(layers.cut());
        UnitChoice unit = Units.choose(raw, extent, options, findings);
        Scaling scaling = scaling(extent, unit.mmPerUnit());
        reportHeights(layers.cut(), unit.mmPerUnit());
        NotePlacing notes = new NotePlacing(raw.notes(), layers, scaling);
        List<UncutLine> uncut = uncut(layers, scaling);
        List<Piece> pieces = pieces(layers.cut(), layers.styles(), scaling);
        if (pieces.isEmpty() && layers.leftOutCurves() > 0) {
            findings.add(DrawingReason.NO_CONTOUR_CUT, layers.leftOutCurves(), layers.leftOut());
        }
        ContourSet contours = ContourBuilder.build(pieces, options.toleranceMm(), findings);
        if (upright > 0) {
            findings.add(DrawingReason.UPRIGHT, upright);
        }
        DiscsInHoles.report(contours.shapes(), findings);
        findings.leftOut().forEach((reason, n) -> findings.add(DrawingReason.MORE, n, reason.code()));
        return new DrawingResult(findings.subject(), raw.acadVersion(), unit.mmPerUnit(), raw.entities(), contours.loops(),
                contours.openChains(), contours.shapes(), findings.findings(), uncut,
                contours.netAreaMm2(), measure(contours.drawn()), unit, counts.uses(), notes.texts(),
                notes.centreMarks());
    }

    private static DrawnMeasure measure(Measure m) {
        return new DrawnMeasure(m.closedLoops(), m.openChains(), m.circleDiametersMm(), m.areaMm2(), m.cutLengthMm());
    }

    private static Bounds extent(List<DrawnCurve> curves) {
        return curves.parallelStream().map(PlaneCurves::extent).reduce(Bounds.EMPTY, Bounds::including);
    }

    private Scaling scaling(Bounds extent, double mmPerUnit) {
        double farthest = extent.isEmpty() ? 0 : Math.max(Math.max(Math.abs(extent.minX()), Math.abs(extent.maxX())),
                Math.max(Math.abs(extent.minY()), Math.abs(extent.maxY())));
        if (farthest * mmPerUnit <= FAR_MM) {
            return new Scaling(mmPerUnit, 0, 0);
        }
        findings.add(DrawingReason.FAR_FROM_ORIGIN, -extent.minX(), -extent.minY());
        return new Scaling(mmPerUnit, extent.minX(), extent.minY());
    }

    private void reportHeights(List<DrawnCurve> curves, double mmPerUnit) {
        double[] z = PlaneCurves.heights(curves);
        if ((z[1] - z[0]) * mmPerUnit > options.toleranceMm()) {
            findings.add(DrawingReason.FLATTENED, z[0] * mmPerUnit, z[1] * mmPerUnit);
        }
    }

    /** Takes the curves out of the list, so that raw and plane geometry do not lie in memory together. */
    private List<Piece> pieces(List<DrawnCurve> curves, SeenStyles styles, Scaling scaling) throws DrawingException {
        List<Piece> pieces = new ArrayList<>(curves.size());
        for (int from = 0; from < curves.size(); from += AT_ONCE) {
            List<DrawnCurve> some = curves.subList(from, Math.min(curves.size(), from + AT_ONCE));
            List<Piece> made = some.parallelStream().map(c -> c.exact() ? piece(c, scaling) : TO_BE_MADE).toList();
            for (int i = 0; i < made.size(); i++) {
                DrawnCurve c = some.set(i, null);
                Piece piece = made.get(i) == TO_BE_MADE ? piece(c, scaling) : made.get(i);
                count(styles.of(c.style()), c, piece.segments());
                if (!piece.segments().isEmpty()) {
                    pieces.add(piece);
                } else {
                    upright += c.curves().isEmpty() ? 0 : 1;
                }
            }
        }
        return pieces;
    }

    private static Piece piece(DrawnCurve c, Scaling scaling) {
        return new Piece(PlaneCurves.segments(c, scaling, CURVE_ERROR_MM), c.closed(), PlaneCurves.isExact(c));
    }

    private void count(SeenStyle style, DrawnCurve curve, List<Segment> segments) throws DrawingException {
        made += segments.size();
        approximated += curve.exact() ? 0 : segments.size();
        if (made > MOST_SEGMENTS || approximated > mostApproximated) {
            throw new DrawingException(Finding.of(DrawingReason.TOO_MANY_PIECES, findings.subject(),
                    Math.max(made, approximated)), findings.findings());
        }
        if (curve.filled()) {
            counts.addFilledArea(style);
        } else {
            counts.add(style, segments);
        }
    }

    private List<UncutLine> uncut(LayerSorting layers, Scaling scaling) throws DrawingException {
        List<UncutLine> lines = new ArrayList<>();
        for (LayerSorting.Uncut u : layers.uncut()) {
            List<Segment> segments = PlaneCurves.segments(u.curve(), scaling, CURVE_ERROR_MM);
            count(u.style(), u.curve(), segments);
            if (!segments.isEmpty()) {
                lines.add(new UncutLine(u.style().meaning(), u.style().state(), u.curve().filled(), u.style().layer(), segments));
            }
        }
        return lines;
    }
}
