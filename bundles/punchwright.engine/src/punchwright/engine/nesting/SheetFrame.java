// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

import punchwright.engine.geometry.Pose;
import punchwright.engine.nesting.shapes.Laid;

/** Sheets as the shape search sees them: the usable region grown by half the web on all sides, from its lower left corner. */
final class SheetFrame {

    private final Stock stock;
    private final List<BoxPart> parts;
    private final ShapeBook book;

    SheetFrame(Stock stock, List<BoxPart> parts, ShapeBook book) {
        this.stock = stock;
        this.parts = parts;
        this.book = book;
    }

    double length(int offer) {
        return Ticks.mm(stock.region(offer).length()) + book.webMm();
    }

    double width(int offer) {
        return Ticks.mm(stock.region(offer).width()) + book.webMm();
    }

    double room(int offer) {
        return length(offer) * width(offer);
    }

    Spot spot(Laid l, int offer) {
        Region r = stock.region(offer);
        double half = book.webMm() / 2;
        double x = l.x() + r.xMm() - half;
        Pose pose = Pose.at(x, l.y() + r.yMm() - half, book.piece(l.kind()).angleDeg(l.turn()));
        return new Spot(l.kind(), pose, x + book.piece(l.kind()).maxX(l.turn()) - half);
    }

    Laid laid(Spot s, int offer) {
        Region r = stock.region(offer);
        double half = book.webMm() / 2;
        return new Laid(s.part(), turn(s), s.pose().x() - r.xMm() + half, s.pose().y() - r.yMm() + half);
    }

    private int turn(Spot s) {
        List<Double> angles = parts.get(s.part()).part().anglesDeg();
        for (int t = 0; t < angles.size(); t++) {
            if (angles.get(t) == s.pose().angleDeg()) {
                return t;
            }
        }
        throw new IllegalStateException("angle " + s.pose().angleDeg() + " is not one of " + angles);
    }
}
