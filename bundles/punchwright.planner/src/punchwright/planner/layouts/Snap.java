// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.NestPart;

/**
 * Places for a piece where its box lies at the margin of the sheet, a web beside a neighbour's box, or in line with a
 * neighbour's edge.
 */
final class Snap {

    private static final double SAME_MM = 1e-6;

    private final ArrangedSheet sheet;
    private final int index;
    private final Piece piece;
    private final Bounds box;
    private final double webMm;

    Snap(ArrangedSheet sheet, int index) {
        this.sheet = sheet;
        this.index = index;
        this.piece = sheet.pieces().get(index);
        this.box = sheet.box(piece);
        this.webMm = sheet.job().parts().stream().mapToDouble(NestPart::webMm).max().orElse(0);
    }

    /** Moved to the nearest such places, along each axis by less than {@code reachMm}. */
    ArrangedSheet near(double reachMm) {
        double dx = nearest(stops(true), box.minX(), reachMm);
        double dy = nearest(stops(false), box.minY(), reachMm);
        return dx == 0 && dy == 0 ? sheet : sheet.moved(index, piece.xMm() + dx, piece.yMm() + dy);
    }

    private static double nearest(List<Double> stops, double at, double reachMm) {
        double best = 0;
        double least = reachMm;
        for (double stop : stops) {
            if (Math.abs(stop - at) < least) {
                least = Math.abs(stop - at);
                best = stop - at;
            }
        }
        return best;
    }

    /** Moved along an axis to the next such place; stays where there is none. */
    ArrangedSheet next(int stepX, int stepY) {
        boolean alongX = stepX != 0;
        int sign = alongX ? stepX : stepY;
        double at = alongX ? box.minX() : box.minY();
        double by = stops(alongX).stream().mapToDouble(s -> (s - at) * sign).filter(d -> d > SAME_MM).min().orElse(0) * sign;
        return by == 0 ? sheet : sheet.moved(index, piece.xMm() + (alongX ? by : 0), piece.yMm() + (alongX ? 0 : by));
    }

    /** Where the lower edge of the piece's box may stop along an axis, mm. */
    private List<Double> stops(boolean alongX) {
        double size = alongX ? box.width() : box.height();
        double edge = sheet.job().margins().edgeMm();
        List<Double> stops = new ArrayList<>();
        boolean across = sheet.sheet().bar() && !alongX;
        stops.add(across ? 0 : alongX ? edge : sheet.job().margins().belowMm());
        stops.add((alongX ? sheet.sheet().lengthMm() : sheet.sheet().widthMm()) - (across ? 0 : edge) - size);
        for (int i = 0; i < sheet.pieces().size(); i++) {
            if (i != index) {
                beside(sheet.box(sheet.pieces().get(i)), alongX, size, stops);
            }
        }
        return stops;
    }

    private void beside(Bounds other, boolean alongX, double size, List<Double> stops) {
        double from = alongX ? other.minX() : other.minY();
        double to = alongX ? other.maxX() : other.maxY();
        boolean inTheWay = alongX ? box.minY() < other.maxY() + webMm - SAME_MM && box.maxY() > other.minY() - webMm + SAME_MM
                : box.minX() < other.maxX() + webMm - SAME_MM && box.maxX() > other.minX() - webMm + SAME_MM;
        if (inTheWay) {
            stops.add(to + webMm);
            stops.add(from - webMm - size);
        } else {
            stops.add(from);
            stops.add(to - size);
        }
    }
}
