// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.ui.sheet.Pen;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;
import punchwright.ui.tooling.LoadedPlace.Loaded;

/**
 * What stands in words at the picture of a place: its name, and for each tool name, die clearance and force against the limit.
 */
final class PlaceWords {

    private static final int HIGH_PERCENT = 80;
    private static final int SHORT_NAME = 3;

    private final GC gc;
    private final int lineHeight;

    PlaceWords(GC gc, int lineHeight) {
        this.gc = gc;
        this.lineHeight = lineHeight;
    }

    /** "Place 3", "Place 3, Holder of four", "by hand". */
    static String placeName(LoadedPlace at) {
        String place = at.place() == null ? Texts.of("place.byHand") : name(at);
        return at.holder() == null ? place : place + ", " + at.holder().getName();
    }

    /** A name that says what it is stands alone; a mere number or letter gets the word before it. */
    private static String name(LoadedPlace at) {
        String name = at.place().getName();
        if (name == null || name.isBlank()) {
            return Texts.of("loading.place", at.place().getIndexPosition());
        }
        return name.length() > SHORT_NAME ? name : Texts.of("loading.place", name);
    }

    /** The tools from {@code top} downwards, and the force bar at the bottom of the cell. */
    void below(LoadedPlace at, Rectangle cell, int top) {
        int y = top;
        int x = cell.x + PlacePainter.PAD_PX;
        int width = cell.width - 2 * PlacePainter.PAD_PX;
        for (Loaded t : at.tools()) {
            gc.setForeground(Inks.of(Ink.GRAPHITE));
            text((at.holder() == null ? "" : t.insert() + "  ") + t.tool().getName(), x, y, width);
            y += lineHeight;
            gc.setForeground(Inks.of(Ink.PENCIL));
            if (at.tools().size() == 1) {
                text(setting(t), x, y, width);
                y += lineHeight;
                text(force(t), x, y, width);
            } else {
                text(force(t), x, y, width);
            }
            y += lineHeight;
        }
        bar(at.tools().stream().mapToDouble(Loaded::percent).max().orElse(0), x,
                cell.y + cell.height - PlacePainter.PAD_PX - PlacePainter.BAR_PX, width);
    }

    /** Die clearance and angle in words. */
    static String setting(Loaded t) {
        String angle = t.turns() ? Texts.of("loading.turns") : Texts.of("loading.angle", Numbers.plain(round(t.angleDeg())));
        return t.clearanceMm() <= 0 ? angle : Texts.of("loading.die", Numbers.fixed(t.clearanceMm(), 2)) + ", " + angle;
    }

    private static double round(double deg) {
        return Math.round(deg * 10) / 10.0;
    }

    /** Force and limit in kN, and their share in per cent. */
    static String force(Loaded t) {
        return Texts.of("loading.force", Numbers.fixed(t.forceKn(), 1), Numbers.fixed(t.limitKn(), 0),
                Numbers.fixed(t.percent(), 0));
    }

    /** Force against the limit; hatched from 80 per cent on, so that colour is not needed. */
    private void bar(double percent, int x, int y, int width) {
        Pen.thin(gc, Ink.PENCIL);
        int filled = (int) Math.round(width * Math.min(100, percent) / 100);
        gc.setBackground(Inks.of(percent > HIGH_PERCENT ? Ink.WARNING : Ink.ACCENT));
        gc.fillRectangle(x, y, filled, PlacePainter.BAR_PX);
        if (percent > HIGH_PERCENT) {
            Pen.thin(gc, Ink.PAPER);
            Pen.hatch(gc, x, y, filled, PlacePainter.BAR_PX, 5);
        }
        Pen.thin(gc, Ink.PENCIL);
        gc.drawRectangle(x, y, width, PlacePainter.BAR_PX);
    }

    /** Text cut to a width with an ellipsis. */
    void text(String text, int x, int y, int width) {
        String shown = text;
        while (shown.length() > 1 && gc.textExtent(shown).x > width) {
            shown = shown.substring(0, shown.length() - 2) + "\u2026";
        }
        gc.drawText(shown, x, y, true);
    }
}
