// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Validation: the union of the hits against the drawn part, by an independent geometry library. */
class ToolChoiceTest {

    private static OperationList check(FeatureSet features, double thickness) {
        return check(features, thickness, Shop.tools());
    }

    private static OperationList check(FeatureSet features, double thickness, List<Tool> tools) {
        OperationList list = ToolChoice.choose(Shop.job(features, thickness, tools));
        String text = list.findings().stream().map(f -> f.code() + " " + f.subject() + ": " + f.message()).toList().toString();
        assertTrue(list.complete(), text);
        CutCheck c = CutCheck.of(features.shape(), list, ToolingRules.USUAL.scallopMm());
        assertTrue(c.deepestMm() <= 0.01, c.toString());
        assertTrue(c.uncutMm() <= c.jointsMm() + 0.05, c + text);
        return list;
    }

    private static Operation first(OperationList list, int feature) {
        return list.operations().stream().filter(o -> o.feature().number() == feature).findFirst().orElseThrow();
    }

    @Test
    void plateWithHolesThatTheShopHasToolsFor() {
        OperationList list = check(Parts.plate(200, 120).round(30, 30, 8).round(170, 30, 8).rectangle(100, 60, 0, 30, 30)
                .roundedRectangle(100, 100, 0, 20, 6, 3).build("A"), 2);
        assertEquals(1, first(list, 1).hits().size());
        assertEquals(OperationKind.SINGLE, first(list, 3).kind());
        assertEquals(1, first(list, 4).hits().size());
        assertEquals(4, list.operations().stream().mapToInt(o -> o.joints().size()).sum());
    }

    @Test
    void largeRoundIsNibbled() {
        OperationList list = check(Parts.plate(200, 200).round(100, 100, 50).build("B"), 2);
        assertEquals(OperationKind.NIBBLING, first(list, 1).kind());
    }

    @Test
    void largeRectangleLeavesItsSlugOnJoints() {
        OperationList list = check(Parts.plate(400, 300).rectangle(200, 150, 0, 250, 150).build("C"), 2);
        assertTrue(list.findings().stream().anyMatch(f -> f.reason() == ToolingReason.SLUG_BY_HAND));
    }

    @Test
    void turnedRectangle() {
        check(Parts.plate(200, 200).rectangle(100, 100, 33, 60, 40).build("D"), 2);
    }

    @Test
    void roundedCornersInsideAndOutside() {
        check(Parts.outline(Parts.rounded(180, 100, 5)).roundedRectangle(90, 50, 0, 60, 40, 4).build("E"), 2);
    }

    @Test
    void notchesInTheOutline() {
        Contour l = Contour.polygon(List.of(new Point(0, 0), new Point(150, 0), new Point(150, 60), new Point(110, 60),
                new Point(110, 100), new Point(70, 100), new Point(70, 70), new Point(50, 70), new Point(50, 100),
                new Point(0, 100)));
        check(Parts.outline(l).build("F"), 2);
    }

    /** A square tool set flush in the corner makes a corner notch in one hit; one of the slot's width an edge notch. */
    @Test
    void notchesAsOneFeature() {
        Contour l = Contour.polygon(List.of(new Point(0, 0), new Point(150, 0), new Point(150, 80), new Point(130, 80),
                new Point(130, 100), new Point(80, 100), new Point(80, 91), new Point(50, 91), new Point(50, 100),
                new Point(0, 100)));
        OperationList list = check(Parts.outline(l).notch(FeatureKind.CORNER_NOTCH, 2, 4).notch(FeatureKind.EDGE_NOTCH, 5, 8)
                .build("F"), 2, List.of(Shop.rectangle(30, 30)));
        assertEquals(1, first(list, 1).hits().size());
        assertEquals(1, first(list, 2).hits().size());
    }

    @Test
    void obroundFromRoundAndRectangle() {
        OperationList list = check(Parts.plate(200, 100).roundedRectangle(100, 50, 0, 70, 10, 5).build("G"), 2,
                List.of(Shop.round(10), Shop.rectangle(50, 10), Shop.rectangle(50, 5)));
        assertTrue(list.operations().stream().filter(o -> o.feature().number() == 1).mapToInt(o -> o.hits().size()).sum() <= 6);
    }

    @Test
    void freeOpening() {
        Contour c = Contour.polygon(List.of(new Point(40, 40), new Point(100, 40), new Point(120, 70), new Point(100, 100),
                new Point(40, 100)));
        check(Parts.plate(200, 140).free(c).build("H"), 2);
    }

    /** A rectangular tool that turns cuts along tangents and leaves joints on the arc. */
    @Test
    void roundPartHangsOnJoints() {
        OperationList list = check(Parts.outline(Contour.circle(new Point(0, 0), 160)).round(0, 0, 20).build("I"), 2);
        assertEquals(4, list.operations().stream().mapToInt(o -> o.joints().size()).sum());
    }

    /** Without a turning place only the round tools are left, and the part has no joints. */
    @Test
    void roundPartWithoutTurningPlaceHasNoJoints() {
        List<Tool> fixed = Shop.tools().stream().map(t -> Shop.with(t, AngleFreedom.QUARTER, 0, 2)).toList();
        OperationList list = check(Parts.outline(Contour.circle(new Point(0, 0), 160)).build("I"), 2, fixed);
        assertTrue(list.findings().stream().anyMatch(f -> f.reason() == ToolingReason.FEW_JOINTS));
    }
}
