// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

/**
 * Where the paper lies under the window: sheet coordinates in mm with y upward, window coordinates in pixels with y downward.
 *
 * @param pxPerMm scale
 * @param left    x in mm at the window's left edge
 * @param top     y in mm at the window's upper edge
 */
public record Viewport(double pxPerMm, double left, double top) {

    /** Smallest scale, px/mm: shows a drawing that is a kilometre long by mistake of its unit. */
    public static final double SMALLEST = 1e-6;
    /** Largest scale, px/mm. */
    public static final double LARGEST = 400;

    /** The viewport that shows a box with a margin in pixels all round. */
    public static Viewport fit(double minX, double minY, double maxX, double maxY, int widthPx, int heightPx, int marginPx) {
        double roomX = Math.max(20, widthPx - 2.0 * marginPx);
        double roomY = Math.max(20, heightPx - 2.0 * marginPx);
        double scale = limited(Math.min(roomX / Math.max(maxX - minX, 0.1), roomY / Math.max(maxY - minY, 0.1)));
        return new Viewport(scale, (minX + maxX) / 2 - widthPx / scale / 2, (minY + maxY) / 2 + heightPx / scale / 2);
    }

    private static double limited(double scale) {
        return Math.max(SMALLEST, Math.min(LARGEST, scale));
    }

    /** Pixel column of an x. */
    public int px(double x) {
        return (int) Math.round((x - left) * pxPerMm);
    }

    /** Pixel row of a y. */
    public int py(double y) {
        return (int) Math.round((top - y) * pxPerMm);
    }

    /** The points of an outline, x and y in turn. */
    public int[] pixels(Outline line) {
        int[] pixels = new int[line.xy().length];
        for (int k = 0; k < pixels.length; k += 2) {
            pixels[k] = px(line.xy()[k]);
            pixels[k + 1] = py(line.xy()[k + 1]);
        }
        return pixels;
    }

    /** x of a pixel column. */
    public double x(int px) {
        return left + px / pxPerMm;
    }

    /** y of a pixel row. */
    public double y(int py) {
        return top - py / pxPerMm;
    }

    /** A length on the screen, at least one pixel. */
    public int length(double mm) {
        return Math.max(1, (int) Math.round(mm * pxPerMm));
    }

    /** Moved by pixels: the paper follows the hand. */
    public Viewport panned(int dx, int dy) {
        return new Viewport(pxPerMm, left - dx / pxPerMm, top + dy / pxPerMm);
    }

    /** Scaled by a factor with the point under the pointer kept in its place. */
    public Viewport zoomed(double factor, int atX, int atY) {
        double scale = limited(pxPerMm * factor);
        return new Viewport(scale, x(atX) - atX / scale, y(atY) + atY / scale);
    }
}
