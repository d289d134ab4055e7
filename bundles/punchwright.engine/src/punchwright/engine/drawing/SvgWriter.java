// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Writes shapes as an SVG picture at true size (1 unit = 1 mm), y upwards; arcs stay arcs. */
public final class SvgWriter {

    private static final double MARGIN_MM = 2;

    private SvgWriter() {
    }

    /** Writes the shapes where they lie; the caller closes the writer. */
    public static void write(List<Shape> shapes, Writer out) throws IOException {
        write(null, shapes, out);
    }

    /** The same on a sheet. @param sheet its edge, drawn thin and not filled; null without one */
    public static void write(Contour sheet, List<Shape> shapes, Writer out) throws IOException {
        Bounds b = sheet == null ? Bounds.EMPTY : sheet.bounds();
        for (Shape s : shapes) {
            b = b.including(s.bounds());
        }
        Bounds box = b.isEmpty() ? new Bounds(0, 0, 1, 1) : b.grown(MARGIN_MM);
        out.write(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" "
                + "viewBox=\"%s %s %s %s\">%n", n(box.width()), n(box.height()), n(box.minX()), n(-box.maxY()), n(box.width()),
                n(box.height())));
        if (sheet != null) {
            StringBuilder path = new StringBuilder();
            add(sheet, path);
            out.write("  <path fill=\"none\" stroke=\"#20262d\" stroke-width=\"0.5\" d=\"" + path + "\"/>\n");
        }
        for (Shape s : shapes) {
            StringBuilder path = new StringBuilder();
            add(s.outer(), path);
            s.holes().forEach(h -> add(h, path));
            out.write("  <path fill=\"#d9dde1\" fill-rule=\"evenodd\" stroke=\"#20262d\" stroke-width=\"0.25\" d=\"" + path
                    + "\"/>\n");
        }
        out.write("</svg>\n");
    }

    private static void add(Contour contour, StringBuilder path) {
        path.append('M').append(at(contour.segments().get(0).start()));
        for (Segment s : contour.segments()) {
            if (s instanceof Arc arc) {
                int halves = Math.abs(arc.sweepRad()) > Math.PI * 0.99 ? 2 : 1;
                for (int i = 1; i <= halves; i++) {
                    path.append('A').append(n(arc.radiusMm())).append(' ').append(n(arc.radiusMm())).append(" 0 0 ")
                            .append(arc.sweepRad() > 0 ? 0 : 1).append(' ').append(at(arc.pointAt((double) i / halves)));
                }
            } else {
                path.append('L').append(at(s.end()));
            }
        }
        path.append('Z');
    }

    private static String at(Point p) {
        return n(p.x()) + " " + n(-p.y());
    }

    private static String n(double v) {
        String s = String.format(Locale.ROOT, "%.6f", v == 0 ? 0.0 : v);
        return s.replaceFirst("\\.?0+$", "").replaceFirst("^-0$", "0");
    }
}
