// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.FormDirection;
import punchwright.model.shop.Tool;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Pen;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * A tool: on the left its section to scale with centre lines and dimensions, on the right the cutting edge enlarged with the gap
 * between punch and die, or the form from the side.
 */
final class ToolPicture {

    private static final int MARGIN = 46;
    private static final int HATCH = 7;

    private final Tool tool;

    ToolPicture(Tool tool) {
        this.tool = tool;
    }

    void draw(GC gc, Rectangle area) {
        if (tool.getLengthMm() <= 0) {
            return;
        }
        int half = area.width * 11 / 20;
        section(gc, new Rectangle(area.x, area.y, half, area.height));
        Rectangle right = new Rectangle(area.x + half, area.y, area.width - half, area.height);
        if (tool.getFormDirection() != FormDirection.NONE && tool.getFormHeightMm() > 0) {
            formSide(gc, right);
        } else if (!tool.getDieClearancesMm().isEmpty()) {
            gap(gc, right);
        }
    }

    private void section(GC gc, Rectangle area) {
        List<Outline> lines = ToolOutlines.of(tool);
        Outline all = ToolOutlines.single(tool);
        double angle = tool.getFixedAngleDeg();
        double[] b = all.placed(angle, 0, 0).bounds();
        Sketch sketch = new Sketch(gc, area, MARGIN, b);
        gc.setBackground(Inks.mixed(Ink.ACCENT, Ink.PAPER, 0.18));
        Pen.thick(gc, Ink.GRAPHITE);
        double round = ToolOutlines.roundDiameter(tool);
        if (round > 0) {
            sketch.circle(0, 0, round, true);
        } else {
            lines.forEach(line -> sketch.polygon(line.placed(angle, 0, 0), true));
        }
        Pen.centre(gc, Ink.PENCIL);
        double over = 10 / sketch.view().pxPerMm();
        sketch.line(b[0] - over, 0, b[2] + over, 0);
        sketch.line(0, b[1] - over, 0, b[3] + over);
        int below = sketch.py(b[1]) + 30;
        Pen.thin(gc, Ink.PENCIL);
        gc.drawLine(sketch.px(b[0]), sketch.py(b[1]) + 3, sketch.px(b[0]), below + 4);
        gc.drawLine(sketch.px(b[2]), sketch.py(b[1]) + 3, sketch.px(b[2]), below + 4);
        Pen.dimension(gc, sketch.px(b[0]), below, sketch.px(b[2]), below, (round > 0 ? "\u2300 " : "") + size(b[2] - b[0]));
        if (round <= 0) {
            int left = sketch.px(b[0]) - 26;
            Pen.thin(gc, Ink.PENCIL);
            gc.drawLine(sketch.px(b[0]) - 3, sketch.py(b[1]), left - 4, sketch.py(b[1]));
            gc.drawLine(sketch.px(b[0]) - 3, sketch.py(b[3]), left - 4, sketch.py(b[3]));
            Pen.dimension(gc, left, sketch.py(b[1]), left, sketch.py(b[3]), size(b[3] - b[1]));
        }
    }

    private static String size(double mm) {
        return Numbers.plain(Math.round(mm * 100) / 100.0);
    }

    /** The edge enlarged: punch on the left above, die on the right below, half the total clearance between them. */
    private void gap(GC gc, Rectangle area) {
        double total = tool.getDieClearancesMm().get(0);
        double perSide = total / 2;
        double scale = Math.max(20, Math.min(200, 30 / perSide));
        int gap = (int) Math.round(perSide * scale);
        int x = area.x + area.width / 2 - gap / 2 - 10;
        int middle = area.y + area.height / 2;
        int top = area.y + 26;
        int bottom = area.y + area.height - 40;
        int punchLeft = Math.max(area.x + 12, x - 70);
        block(gc, punchLeft, top, x - punchLeft, middle - top + 6);
        int dieRight = Math.min(area.x + area.width - 12, x + gap + 70);
        block(gc, x + gap, middle - 6, dieRight - x - gap, bottom - middle + 6);
        Pen.thin(gc, Ink.PENCIL);
        gc.drawLine(x, middle + 6, x, bottom + 8);
        gc.setForeground(Inks.of(Ink.GRAPHITE));
        String figure = Texts.of("picture.gap", size(perSide));
        Point extent = gc.textExtent(figure);
        gc.drawText(figure, area.x + (area.width - extent.x) / 2, bottom + 8, true);
        label(gc, Texts.of("picture.punch"), (punchLeft + x) / 2, (top + middle) / 2);
        label(gc, Texts.of("picture.die"), (x + gap + dieRight) / 2, (middle + bottom) / 2);
        String all = Texts.of("picture.dies", tool.getDieClearancesMm().stream().map(c -> Numbers.fixed(c, 2))
                .collect(Collectors.joining("; ")));
        gc.setForeground(Inks.of(Ink.PENCIL));
        Point allExtent = gc.textExtent(all);
        int left = Math.min(area.x + Math.max(4, (area.width - allExtent.x) / 2), area.x + area.width - allExtent.x - 4);
        gc.drawText(all, left, area.y + 5, true);
    }

    private static void block(GC gc, int x, int y, int width, int height) {
        Pen.thin(gc, Ink.FAINT);
        Pen.hatch(gc, x, y, width, height, HATCH);
        Pen.thick(gc, Ink.GRAPHITE);
        gc.drawRectangle(x, y, width, height);
    }

    private static void label(GC gc, String text, int x, int y) {
        Point size = gc.textExtent(text);
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.setForeground(Inks.of(Ink.GRAPHITE));
        gc.fillRectangle(x - size.x / 2 - 3, y - size.y / 2, size.x + 6, size.y);
        gc.drawText(text, x - size.x / 2, y - size.y / 2, true);
    }

    /** A form from the side: a sheet with a bump of its height, up or down. */
    private void formSide(GC gc, Rectangle area) {
        double reach = tool.getLengthMm() * 0.9 + 2;
        double height = tool.getFormHeightMm();
        double way = tool.getFormDirection() == FormDirection.UP ? 1 : -1;
        Sketch sketch = new Sketch(gc, area, MARGIN, -reach, -height - 1, reach, height + 1);
        double half = tool.getLengthMm() / 2;
        Pen.thick(gc, Ink.GRAPHITE);
        gc.setLineCap(SWT.CAP_ROUND);
        sketch.line(-reach, 0, -half, 0);
        sketch.line(-half, 0, -half * 0.75, way * height);
        sketch.line(-half * 0.75, way * height, half * 0.75, way * height);
        sketch.line(half * 0.75, way * height, half, 0);
        sketch.line(half, 0, reach, 0);
        int x = sketch.px(-reach) - 8;
        Pen.dimension(gc, x, sketch.py(0), x, sketch.py(way * height), size(height));
    }
}
