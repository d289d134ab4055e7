// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.Grain;
import punchwright.model.shop.StockSheet;
import punchwright.ui.sheet.Pen;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** A sheet with its size and rolling direction. */
final class StockPicture {

    private StockPicture() {
    }

    static void draw(GC gc, Rectangle area, StockSheet sheet) {
        double length = sheet.getLengthMm();
        double width = sheet.getWidthMm();
        if (length <= 0 || width <= 0) {
            return;
        }
        Sketch sketch = new Sketch(gc, area, 44, 0, 0, length, width);
        gc.setBackground(Inks.of(Ink.SHEET));
        gc.fillRectangle(sketch.pixels(0, 0, length, width));
        Pen.thick(gc, Ink.GRAPHITE);
        sketch.box(0, 0, length, width);
        if (sheet.getGrain() != Grain.UNKNOWN) {
            boolean along = sheet.getGrain() == Grain.ALONG_LENGTH;
            double half = (along ? length : width) * 0.25;
            int x1 = sketch.px(length / 2 - (along ? half : 0));
            int y1 = sketch.py(width / 2 - (along ? 0 : half));
            int x2 = sketch.px(length / 2 + (along ? half : 0));
            int y2 = sketch.py(width / 2 + (along ? 0 : half));
            Pen.dimension(gc, x1, y1, x2, y2, Texts.of("picture.grain"));
        }
        int below = sketch.py(0) + 26;
        Pen.dimension(gc, sketch.px(0), below, sketch.px(length), below, Numbers.plain(length));
        int left = sketch.px(0) - 14;
        Pen.dimension(gc, left, sketch.py(0), left, sketch.py(width), Numbers.plain(width));
    }
}
