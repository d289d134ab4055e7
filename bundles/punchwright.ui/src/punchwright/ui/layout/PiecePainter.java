// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.Remnant;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.Piece;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Pen;
import punchwright.ui.sheet.Viewport;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * Draws over an arranged sheet: the clamp strip hatched, margins dashed, remnants long-dash-dot, locked pieces with a padlock,
 * pieces with a problem by thick dashes and its word, the selection in the accent, the piece in the hand with its place.
 */
final class PiecePainter {

    private static final int HATCH_PX = 9;
    private static final int[] WRONG = { 9, 7 };
    private static final int LEAST_LOCK_PX = 18;

    private final GC gc;
    private final Viewport view;
    private final SheetBench bench;
    private final ArrangedSheet sheet;

    PiecePainter(GC gc, Viewport view, SheetBench bench) {
        this.gc = gc;
        this.view = view;
        this.bench = bench;
        this.sheet = bench.sheet();
    }

    void draw() {
        gc.setAntialias(SWT.ON);
        zones();
        remnants();
        int held = bench.hasInHand() && !bench.selected().isEmpty() ? bench.selected().getFirst() : -1;
        for (int i = 0; i < sheet.pieces().size(); i++) {
            if (i != held) {
                number(i, true);
            }
        }
        if (held >= 0) {
            fill(sheet.pieces().get(held));
            number(held, false);
        }
        bench.selected().stream().filter(i -> i < sheet.pieces().size()).forEach(i -> {
            Pen.thick(gc, Ink.ACCENT);
            gc.setLineWidth(3);
            outline(sheet.pieces().get(i));
        });
        wrong();
        sheet.pieces().stream().filter(Piece::locked).forEach(this::padlock);
        new ProblemTags(gc, view).draw(bench.problems());
        if (held >= 0) {
            place(sheet.pieces().get(held));
        }
    }

    private void zones() {
        double length = sheet.sheet().lengthMm();
        double width = sheet.sheet().widthMm();
        double strip = sheet.sheet().bar() ? 0 : sheet.job().margins().clampStripMm();
        double edge = sheet.job().margins().edgeMm();
        if (strip > 0) {
            Pen.thin(gc, Ink.FAINT);
            Pen.hatch(gc, view.px(0), view.py(strip), view.px(length) - view.px(0), view.py(0) - view.py(strip), HATCH_PX);
            Pen.thin(gc, Ink.PENCIL);
            gc.drawLine(view.px(0), view.py(strip), view.px(length), view.py(strip));
        }
        Pen.dashed(gc, Ink.PENCIL);
        double below = Math.max(strip, sheet.sheet().bar() ? 0 : edge);
        double side = sheet.sheet().bar() ? 0 : edge;
        gc.drawRectangle(view.px(edge), view.py(width - side), view.px(length - edge) - view.px(edge),
                view.py(below) - view.py(width - side));
    }

    private void remnants() {
        List<Remnant> remnants = bench.hasInHand() || bench.row().figures() == null ? List.of()
                : bench.row().figures().remnants();
        for (Remnant r : remnants) {
            Pen.centre(gc, Ink.PENCIL);
            int x = view.px(r.xMm());
            int y = view.py(r.yMm() + r.widthMm());
            gc.drawRectangle(x + 3, y + 3, view.px(r.xMm() + r.lengthMm()) - x - 6, view.py(r.yMm()) - y - 6);
            String text = Texts.of("layouts.remnant", Numbers.plain(Math.round(r.lengthMm())),
                    Numbers.plain(Math.round(r.widthMm())));
            Point size = gc.textExtent(text);
            if (size.x + 16 < view.px(r.xMm() + r.lengthMm()) - x && size.y + 16 < view.py(r.yMm()) - y) {
                gc.setForeground(Inks.of(Ink.PENCIL));
                gc.drawText(text, x + 10, y + 8, true);
            }
        }
    }

    private void fill(Piece piece) {
        List<Outline> contours = bench.scenes().contours(sheet, piece);
        for (int k = 0; k < contours.size(); k++) {
            gc.setBackground(Inks.of(k == 0 ? Ink.PART : Ink.SHEET));
            gc.fillPolygon(view.pixels(contours.get(k)));
            if (k > 0) {
                Pen.thin(gc, Ink.GRAPHITE);
                gc.drawPolygon(view.pixels(contours.get(k)));
            }
        }
    }

    /** The number of a piece; {@code labelled}: only where the label that the picture gives it does not fit. */
    private void number(int index, boolean labelled) {
        Bounds box = sheet.box(sheet.pieces().get(index));
        int width = view.px(box.maxX()) - view.px(box.minX()) - 8;
        int height = view.py(box.minY()) - view.py(box.maxY()) - 8;
        String number = String.valueOf(index + 1);
        Point label = gc.textExtent(bench.scenes().label(index + 1, sheet.pieces().get(index)));
        Point size = gc.textExtent(number);
        boolean shown = labelled && label.x <= width && label.y <= height;
        if (!shown && size.x <= width && size.y <= height) {
            int x = (view.px(box.minX()) + view.px(box.maxX()) - size.x) / 2;
            int y = (view.py(box.minY()) + view.py(box.maxY()) - size.y) / 2;
            gc.setBackground(Inks.of(Ink.PART));
            gc.fillRectangle(x - 3, y, size.x + 6, size.y);
            gc.setForeground(Inks.of(Ink.PENCIL));
            gc.drawText(number, x, y, true);
        }
    }

    private void outline(Piece piece) {
        bench.scenes().contours(sheet, piece).stream().limit(1).forEach(o -> gc.drawPolygon(view.pixels(o)));
    }

    private void wrong() {
        Set<Integer> pieces = new LinkedHashSet<>();
        bench.problems().forEach(p -> pieces.addAll(p.pieces()));
        for (int number : pieces) {
            if (number >= 1 && number <= sheet.pieces().size()) {
                gc.setForeground(Inks.of(Ink.ERROR));
                gc.setLineWidth(4);
                gc.setLineDash(WRONG);
                outline(sheet.pieces().get(number - 1));
            }
        }
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    /** A padlock in the upper left corner of the piece's box. */
    private void padlock(Piece piece) {
        Bounds box = sheet.box(piece);
        int x = view.px(box.minX()) + 4;
        int y = view.py(box.maxY()) + 4;
        if (view.px(box.maxX()) - x < LEAST_LOCK_PX || view.py(box.minY()) - y < LEAST_LOCK_PX) {
            return;
        }
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(x - 2, y - 2, 14, 16);
        Pen.thick(gc, Ink.GRAPHITE);
        gc.drawArc(x + 2, y, 6, 9, 0, 180);
        gc.setBackground(Inks.of(Ink.GRAPHITE));
        gc.fillRectangle(x, y + 5, 10, 7);
    }

    /** Where the piece in the hand lies, above it. */
    private void place(Piece piece) {
        Bounds box = sheet.box(piece);
        String text = Texts.of("layouts.at", Numbers.fixed(box.minX(), 1), Numbers.fixed(box.minY(), 1));
        new ProblemTags(gc, view).tag(text, view.px((box.minX() + box.maxX()) / 2),
                view.py(box.maxY()) - gc.textExtent(text).y - 8, Ink.GRAPHITE);
    }
}
