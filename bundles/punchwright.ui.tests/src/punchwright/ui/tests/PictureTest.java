// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.ui.picture.ToolOutlines;
import punchwright.ui.sheet.HitGroup;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Scene;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.sheet.Viewport;

/** Geometry of the pictures against textbook formulas, and the time a full sheet takes. */
class PictureTest {

    /**
     * Areas by the formulas of plane geometry (any mathematical handbook): circle, square, hexagon over flats, equilateral
     * triangle.
     */
    @TestFactory
    Stream<DynamicTest> outlineOfAToolHasTheAreaOfItsShape() {
        return Stream.of(new Section(ToolShape.ROUND, 10, 0, 0, 78.5398), new Section(ToolShape.SQUARE, 10, 0, 0, 100),
                new Section(ToolShape.RECTANGLE, 30, 5, 0, 150), new Section(ToolShape.OBROUND, 30, 10, 0, 278.5398),
                new Section(ToolShape.HEXAGON, 10, 0, 0, 86.6025), new Section(ToolShape.TRIANGLE, 10, 0, 0, 43.3013),
                new Section(ToolShape.RECTANGLE, 20, 10, 2, 196.5664), new Section(ToolShape.DOUBLE_FLAT, 20, 10, 0, 191.3223),
                new Section(ToolShape.SINGLE_FLAT, 20, 15, 0, 252.7408))
                .map(s -> DynamicTest.dynamicTest(s.toString(), () -> check(s)));
    }

    private record Section(ToolShape shape, double length, double width, double radius, double areaMm2) {
    }

    private static void check(Section section) {
        Tool tool = ShopFactory.eINSTANCE.createTool();
        tool.setShape(section.shape());
        tool.setLengthMm(section.length());
        tool.setWidthMm(section.width());
        tool.setCornerRadiusMm(section.radius());
        assertEquals(section.areaMm2(), area(ToolOutlines.single(tool)), section.areaMm2() * 0.003,
                "chords lose less than 0.3 %");
    }

    private static double area(Outline outline) {
        double[] xy = outline.xy();
        double twice = 0;
        for (int i = 0, j = xy.length - 2; i < xy.length; j = i, i += 2) {
            twice += xy[j] * xy[i + 1] - xy[i] * xy[j + 1];
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void zoomKeepsThePointUnderThePointer() {
        Viewport view = Viewport.fit(0, 0, 2000, 1000, 800, 600, 40);
        double x = view.x(300);
        double y = view.y(200);
        Viewport closer = view.zoomed(1.25, 300, 200);
        assertEquals(x, closer.x(300), 1e-9);
        assertEquals(y, closer.y(200), 1e-9);
        assertEquals(view.pxPerMm() * 1.25, closer.pxPerMm(), 1e-12);
    }

    @Test
    void fitShowsTheWholeBox() {
        Viewport view = Viewport.fit(-50, -100, 2450, 1250, 900, 500, 30);
        assertTrue(view.px(-50) >= 29 && view.px(2450) <= 871);
        assertTrue(view.py(1250) >= 29 && view.py(-100) <= 471);
    }

    @Test
    void gridFindsEveryHitInTheBox() {
        HitGroup group = hits(1, 2500, 2500, 1250);
        int[] inside = new int[1];
        int[] found = new int[1];
        for (int i = 0; i < group.size(); i++) {
            inside[0] += group.x(i) >= 400 && group.x(i) <= 900 && group.y(i) >= 200 && group.y(i) <= 700 ? 1 : 0;
        }
        group.within(400, 200, 900, 700, i -> found[0] += group.x(i) >= 400 && group.x(i) <= 900 && group.y(i) >= 200
                && group.y(i) <= 700 ? 1 : 0);
        assertTrue(inside[0] > 0);
        assertEquals(inside[0], found[0]);
    }

    private static HitGroup hits(int balloon, int count, double length, double width) {
        Outline square = new Outline(new double[] { -4, -4, 4, -4, 4, 4, -4, 4 });
        HitGroup.Builder builder = new HitGroup.Builder(balloon, "Square 8", square, 0);
        for (int i = 0; i < count; i++) {
            double golden = i * 0.6180339887498949;
            builder.add((balloon - 1) * count + i, 0, (golden - Math.floor(golden)) * length, (i + 0.5) * width / count, 0);
        }
        return builder.build(length, width);
    }

    /** Fifty thousand hits: drawn in well under a second even on a busy machine, and every one can be selected by its number. */
    @Test
    void fullSheetIsDrawnFast() {
        Shell shell = new Shell(Display.getCurrent());
        try {
            shell.setLayout(new FillLayout());
            shell.setSize(1200, 700);
            SheetCanvas canvas = new SheetCanvas(shell, "Sheet");
            shell.open();
            List<HitGroup> groups = java.util.stream.IntStream.rangeClosed(1, 10)
                    .mapToObj(b -> hits(b, 5000, 2500, 1250)).toList();
            canvas.setScene(new Scene(2500, 1250, List.of(), groups, List.of(), List.of(), List.of()));
            long best = Long.MAX_VALUE;
            for (int run = 0; run < 4; run++) {
                canvas.fit();
                canvas.update();
                Ui.settle();
                best = Math.min(best, canvas.lastDrawMs());
            }
            assertEquals(50_000, canvas.scene().hitCount());
            canvas.select(49_999);
            assertEquals(49_999, canvas.selected());
            System.out.println("50 000 hits drawn in " + best + " ms");
            assertTrue(best < 800, "50 000 hits took " + best + " ms");
        } finally {
            shell.dispose();
        }
    }
}
