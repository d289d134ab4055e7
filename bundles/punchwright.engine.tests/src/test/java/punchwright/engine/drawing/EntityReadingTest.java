// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;

/** Validation: each entity type of the DXF Reference ("ENTITIES") against areas and lengths of plane geometry. */
class EntityReadingTest {

    private static Contour only(String entity) throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm() + Dxf.entities(Dxf.tags(entity)));
        assertEquals(1, r.loops().size());
        return r.loops().get(0);
    }

    @Test
    void linesAndACircleMakeAPlateWithAHole() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm() + Dxf.entities(Dxf.PLATE + Dxf.circle(100, 50, 10)));
        assertEquals(1, r.shapes().size());
        assertEquals(20000 - 100 * Math.PI, r.areaMm2(), 1e-9);
        assertEquals(600 + 20 * Math.PI, r.cutLengthMm(), 1e-9);
        assertEquals(List.of(20.0), r.circleDiametersMm());
        assertEquals(Map.of("LINE", 4, "CIRCLE", 1), r.entities());
        assertEquals("AC1015", r.acadVersion());
        assertEquals(List.of(), r.findings());
    }

    @Test
    void lightPolylineWithBulges() throws DrawingException {
        Contour slot = only("0 LWPOLYLINE|8 0|90 4|70 1|10 0|20 0|10 30|20 0|42 1|10 30|20 8|10 0|20 8|42 1");
        assertEquals(30 * 8 + 16 * Math.PI, slot.areaMm2(), 1e-9);
    }

    @Test
    void oldPolylineSkipsFrameVertices() throws DrawingException {
        Contour slot = only("0 POLYLINE|8 0|66 1|70 1|0 VERTEX|10 0|20 0|0 VERTEX|10 99|20 99|70 16|0 VERTEX|10 30|20 0|42 1"
                + "|0 VERTEX|10 30|20 8|0 VERTEX|10 0|20 8|42 1|0 SEQEND");
        assertEquals(30 * 8 + 16 * Math.PI, slot.areaMm2(), 1e-9);
    }

    @Test
    void twoArcsMakeACircle() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm()
                + Dxf.entities(Dxf.tags("0 ARC|10 5|20 6|40 7|50 350|51 100|0 ARC|10 5|20 6|40 7|50 100|51 350")));
        assertEquals(14, r.circleDiametersMm().get(0), 1e-9);
        assertEquals(49 * Math.PI, r.areaMm2(), 1e-9);
    }

    @Test
    void ellipseHasItsAreaAndIsNoCircle() throws DrawingException {
        Contour ellipse = only("0 ELLIPSE|10 50|20 40|11 30|21 0|40 0.5|41 0|42 6.283185307179586");
        assertEquals(Math.PI * 30 * 15, ellipse.areaMm2(), Math.PI * 450 * 1e-5);
        // Perimeter by Ramanujan's second formula, error far below 1e-6 here.
        double h = Math.pow((30 - 15) / 45.0, 2);
        assertEquals(Math.PI * 45 * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h))), ellipse.lengthMm(), 0.01);
    }

    @Test
    void aRationalSplineIsTheCircleItStandsFor() throws DrawingException {
        // Nine control points, weights 1 and sqrt(1/2): L. Piegl, W. Tiller, "The NURBS Book", section 7.5.
        String w = Double.toString(Math.sqrt(0.5));
        Contour circle = only("0 SPLINE|70 13|71 2|72 12|73 9|40 0|40 0|40 0|40 1|40 1|40 2|40 2|40 3|40 3|40 4|40 4|40 4"
                + "|41 1|41 " + w + "|41 1|41 " + w + "|41 1|41 " + w + "|41 1|41 " + w + "|41 1"
                + "|10 10|20 0|10 10|20 10|10 0|20 10|10 -10|20 10|10 -10|20 0"
                + "|10 -10|20 -10|10 0|20 -10|10 10|20 -10|10 10|20 0");
        assertEquals(100 * Math.PI, circle.areaMm2(), 1e-3);
        assertEquals(20 * Math.PI, circle.lengthMm(), 1e-3);
    }

    @Test
    void aBezierSegmentHasTheAreaOfItsPolynomial() throws DrawingException {
        // y = x (1 - x) scaled by 40: area under a parabola with height h over width w is 2/3 h w.
        DrawingResult r = Dxf.read(Dxf.mm() + Dxf.entities(Dxf.tags("0 SPLINE|70 8|71 2|73 3|40 0|40 0|40 0|40 1|40 1|40 1"
                + "|10 0|20 0|10 20|20 20|10 40|20 0") + Dxf.line(0, 0, 40, 0)));
        assertEquals(2.0 / 3 * 10 * 40, r.areaMm2(), 0.01);
    }

    @Test
    void fitPointsOnACircleGiveNearlyTheCircle() throws DrawingException {
        StringBuilder fit = new StringBuilder("0 SPLINE|70 8|71 3|74 25");
        for (int i = 0; i <= 24; i++) {
            fit.append("|11 ").append(30 * Math.cos(i * Math.PI / 12)).append("|21 ").append(30 * Math.sin(i * Math.PI / 12));
        }
        fit.append("|12 0|22 1|13 0|23 1");
        assertEquals(900 * Math.PI, only(fit.toString()).areaMm2(), 0.5);
    }

    @Test
    void extrusionBelowMirrorsX() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm()
                + Dxf.entities(Dxf.PLATE + Dxf.tags("0 CIRCLE|10 -150|20 50|40 10|210 0|220 0|230 -1")));
        Bounds hole = r.shapes().get(0).holes().get(0).bounds();
        assertEquals(150, hole.center().x(), 1e-9);
    }

    @Test
    void aTiltedCircleIsSeenAsAnEllipse() throws DrawingException {
        // Plane tilted by 60 degrees: the short axis is half the long one.
        Contour c = only("0 CIRCLE|10 0|20 0|40 20|210 0|220 " + Math.sin(Math.PI / 3) + "|230 0.5");
        assertEquals(Math.PI * 400 * 0.5, c.areaMm2(), 0.01);
    }

    @Test
    void fullArcIsClosed() throws DrawingException {
        assertEquals(25 * Math.PI, only("0 ARC|10 0|20 0|40 5|50 0|51 360").areaMm2(), 1e-9);
    }

    @Test
    void textsAndPointsAreNotCut() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm()
                + Dxf.entities(Dxf.PLATE + Dxf.tags("0 TEXT|10 5|20 5|40 3|1 HELLO|0 POINT|10 1|20 1")));
        assertEquals(1, r.loops().size());
        assertTrue(r.findings().stream().anyMatch(f -> f.message().contains("TEXT (1)")));
    }
}
