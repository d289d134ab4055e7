// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.model.files.Workspace;
import punchwright.model.shop.LayerMeaning;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.ShopFactory;
import punchwright.model.work.DrawingUnit;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.PickPoint;
import punchwright.model.work.WorkFactory;

/** A part's shape out of its drawing: unit, layers and the one of several. Sizes by hand from the drawing. */
class DrawingStoreTest {

    private static final String TWO_PLATES = plate(0, 0, 100, 50, "0") + circle(50, 25, 5, "0") + plate(200, 0, 40, 40, "0");

    @TempDir
    Path folder;
    private Workspace workspace;
    private DrawingStore store;

    @BeforeEach
    void drawings() throws IOException {
        workspace = Workspace.create(folder, "Shop", "EUR");
        Files.createDirectories(folder.resolve("drawings"));
        Files.writeString(folder.resolve("drawings/two.dxf"), drawing(TWO_PLATES));
        Files.writeString(folder.resolve("drawings/layers.dxf"), drawing(plate(0, 0, 80, 50, "OUT") + circle(20, 25, 5, "BEND")));
        store = new DrawingStore(workspace);
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private static String drawing(String entities) {
        return tags("0 SECTION|2 HEADER|9 $INSUNITS|70 4|0 ENDSEC|0 SECTION|2 ENTITIES|" + entities + "0 ENDSEC|0 EOF");
    }

    private static String tags(String pairs) {
        StringBuilder text = new StringBuilder();
        for (String pair : pairs.split("\\|")) {
            text.append(pair.replaceFirst(" ", "\n")).append('\n');
        }
        return text.toString();
    }

    private static String plate(double x, double y, double length, double width, String layer) {
        return "0 LWPOLYLINE|8 " + layer + "|90 4|70 1|10 " + x + "|20 " + y + "|10 " + (x + length) + "|20 " + y + "|10 "
                + (x + length)
                + "|20 " + (y + width) + "|10 " + x + "|20 " + (y + width) + "|";
    }

    private static String circle(double x, double y, double radius, String layer) {
        return "0 CIRCLE|8 " + layer + "|10 " + x + "|20 " + y + "|40 " + radius + "|";
    }

    private static DrawnShape drawn(String file) {
        DrawnShape shape = WorkFactory.eINSTANCE.createDrawnShape();
        shape.setDrawing("drawings/" + file);
        return shape;
    }

    private static DrawnShape picked(double x, double y) {
        DrawnShape shape = drawn("two.dxf");
        PickPoint pick = WorkFactory.eINSTANCE.createPickPoint();
        pick.setXMm(x);
        pick.setYMm(y);
        shape.setPick(pick);
        return shape;
    }

    @Test
    void thePickedPartIsTaken() {
        assertEquals(100 * 50 - Math.PI * 25, store.shape(picked(10, 10), "left").areaMm2(), 1e-6);
        assertEquals(1600, store.shape(picked(210, 5), "right").areaMm2(), 1e-9);
    }

    @Test
    void withoutAPickSeveralPartsAreRefusedAsBefore() {
        InputException e = assertThrows(InputException.class, () -> store.shape(drawn("two.dxf"), "P"));
        assertEquals(InputReason.MANY_PARTS_IN_DRAWING, e.finding().reason());
    }

    @Test
    void aPickBesideEveryPartOrInAHoleIsRefusedWithItsPlace() {
        for (Point at : List.of(new Point(150, 20), new Point(50, 25))) {
            InputException e = assertThrows(InputException.class, () -> store.shape(picked(at.x(), at.y()), "P"));
            assertEquals(InputReason.NO_PART_AT_PLACE, e.finding().reason());
            assertEquals(at, e.finding().place());
            assertTrue(e.finding().message().contains("two.dxf"), e.finding().message());
        }
    }

    @Test
    void thePlaceForAPartFindsItAgain() {
        DrawnShape any = picked(10, 10);
        List<Shape> shapes = store.drawing(any, "P").shapes();
        assertEquals(2, shapes.size());
        for (Shape shape : shapes) {
            assertEquals(shape, PartPick.at(shapes, PartPick.inside(shape)).orElseThrow());
        }
    }

    @Test
    void aPartInTheOpeningOfAnotherIsToldApart() {
        Shape frame = new Shape(box(0, 0, 100, 100), List.of(box(10, 10, 90, 90)));
        Shape inner = new Shape(box(20, 20, 80, 80), List.of());
        List<Shape> shapes = List.of(frame, inner);
        assertEquals(frame, PartPick.at(shapes, PartPick.inside(frame)).orElseThrow());
        assertEquals(inner, PartPick.at(shapes, PartPick.inside(inner)).orElseThrow());
    }

    private static Contour box(double x1, double y1, double x2, double y2) {
        return Contour.polygon(List.of(new Point(x1, y1), new Point(x2, y1), new Point(x2, y2), new Point(x1, y2)));
    }

    @Test
    void twoPartsReadOneDrawingEachInItsOwnWay() {
        DrawnShape plain = drawn("layers.dxf");
        DrawnShape own = drawn("layers.dxf");
        LayerRule rule = ShopFactory.eINSTANCE.createLayerRule();
        rule.setMeaning(LayerMeaning.CUT);
        rule.getLayerPatterns().add("bend");
        own.getLayerRules().add(rule);
        assertEquals(0, store.shape(plain, "A").holes().size());
        assertEquals(1, store.shape(own, "B").holes().size());
        assertEquals(0, store.shape(plain, "A").holes().size());
        own.setUnit(DrawingUnit.INCH);
        assertEquals(80 * 25.4, store.shape(own, "B").bounds().width(), 1e-6);
    }
}
