// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.Machine;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.ui.picture.HolderPicture;
import punchwright.ui.picture.PlacesPicture;
import punchwright.ui.picture.ToolOutlines;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Pen;
import punchwright.ui.sheet.ScenePainter;
import punchwright.ui.sheet.Viewport;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;
import punchwright.ui.tooling.LoadedPlace.Loaded;

/**
 * One place of the machine with what stands in it: seen from above, to one scale for all places, tools at their angle, and the
 * words below it.
 */
final class PlacePainter {

    /** Height of the force bar. */
    static final int BAR_PX = 7;
    /** Margin inside a cell. */
    static final int PAD_PX = 8;
    private static final int BALLOON_PX = 22;

    private final GC gc;
    private final double pxPerMm;
    private final int lineHeight;
    private final PlaceWords words;

    PlacePainter(GC gc, double pxPerMm) {
        this.gc = gc;
        this.pxPerMm = pxPerMm;
        lineHeight = gc.getFontMetrics().getHeight() + 1;
        words = new PlaceWords(gc, lineHeight);
    }

    /** Largest diameter that a place shows, mm. */
    static double diameterMm(LoadedPlace at) {
        double holder = at.holder() == null ? 0 : at.holder().getOuterDiameterMm();
        double tool = at.holder() != null ? 0 : 2 * at.tools().stream().mapToDouble(t -> ToolOutlines.single(t.tool()).radius())
                .max().orElse(0);
        double place = at.place() == null ? 0 : at.place().getMaxToolDiameterMm();
        return Math.max(12, Math.max(place, Math.max(holder, tool)));
    }

    /** Rows of text below the picture. */
    static int rows(LoadedPlace at) {
        return at.tools().size() == 1 ? 3 : at.tools().size() * 2;
    }

    /** Height of a cell whose picture is {@code picturePx} high. */
    static int height(int picturePx, int rows, int lineHeight) {
        return PAD_PX + lineHeight + 4 + picturePx + 4 + rows * lineHeight + BAR_PX + PAD_PX;
    }

    void draw(LoadedPlace at, Rectangle cell, int picturePx, boolean selected) {
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(cell);
        title(at, cell);
        int cx = cell.x + cell.width / 2;
        int cy = cell.y + PAD_PX + lineHeight + 4 + picturePx / 2;
        place(at, cx, cy);
        if (at.holder() == null) {
            at.tools().forEach(t -> tool(t, cx, cy));
            balloon(at.tools().get(0).number(), cell, cx, cy, diameterMm(at) / 2);
        } else {
            holder(at, cx, cy);
        }
        words.below(at, cell, cell.y + PAD_PX + lineHeight + 4 + picturePx + 4);
        if (selected) {
            Pen.thick(gc, Ink.ACCENT);
            gc.setLineWidth(3);
            gc.drawRectangle(cell.x + 2, cell.y + 2, cell.width - 5, cell.height - 5);
        } else {
            Pen.thin(gc, Ink.FAINT);
            gc.drawRectangle(cell.x + 2, cell.y + 2, cell.width - 5, cell.height - 5);
        }
    }

    /** All places of the machine, those that are loaded marked. */
    void overview(Machine machine, List<LoadedPlace> places, Rectangle cell) {
        gc.setForeground(Inks.of(Ink.GRAPHITE));
        words.text(machine.getName(), cell.x + PAD_PX, cell.y + PAD_PX, cell.width - 2 * PAD_PX);
        Set<Place> loaded = places.stream().map(LoadedPlace::place).filter(Objects::nonNull).collect(Collectors.toSet());
        int top = cell.y + PAD_PX + lineHeight + 4;
        int bottom = cell.y + cell.height - 2 * lineHeight - PAD_PX;
        new PlacesPicture(machine, loaded).draw(gc, new Rectangle(cell.x + PAD_PX, top, cell.width - 2 * PAD_PX, bottom - top));
        gc.setForeground(Inks.of(Ink.PENCIL));
        words.text(Texts.of("loading.used", loaded.size(), machine.getPlaces().size()), cell.x + PAD_PX, bottom + 4,
                cell.width - 2 * PAD_PX);
        Pen.thin(gc, Ink.FAINT);
        gc.drawRectangle(cell.x + 2, cell.y + 2, cell.width - 5, cell.height - 5);
    }

    private void title(LoadedPlace at, Rectangle cell) {
        gc.setForeground(Inks.of(Ink.GRAPHITE));
        words.text(PlaceWords.placeName(at), cell.x + PAD_PX, cell.y + PAD_PX, cell.width - 2 * PAD_PX);
    }

    private void place(LoadedPlace at, int cx, int cy) {
        gc.setBackground(Inks.of(Ink.PART));
        if (at.place() == null) {
            Pen.dashed(gc, Ink.PENCIL);
        } else {
            Pen.thick(gc, at.place().isTurns() ? Ink.ACCENT : Ink.GRAPHITE);
        }
        circle(cx, cy, at.place() == null ? diameterMm(at) : Math.max(12, at.place().getMaxToolDiameterMm()), true);
        Pen.centre(gc, Ink.FAINT);
        int arm = px(diameterMm(at) / 2) + 5;
        gc.drawLine(cx - arm, cy, cx + arm, cy);
        gc.drawLine(cx, cy - arm, cx, cy + arm);
    }

    private void holder(LoadedPlace at, int cx, int cy) {
        MultiToolHolder holder = at.holder();
        gc.setBackground(Inks.of(Ink.SHEET));
        Pen.thick(gc, Ink.GRAPHITE);
        circle(cx, cy, holder.getOuterDiameterMm(), true);
        for (int k = 0; k < holder.getInsertCount(); k++) {
            double[] xy = HolderPicture.insertAt(holder, k);
            int x = cx + px(xy[0]);
            int y = cy - px(xy[1]);
            gc.setBackground(Inks.of(Ink.PAPER));
            Pen.thin(gc, Ink.PENCIL);
            circle(x, y, holder.getLargestInsertDiameterMm(), true);
            int insert = k + 1;
            at.tools().stream().filter(t -> t.insert() == insert).findFirst().ifPresent(t -> {
                tool(t, x, y);
                balloonAt(t.number(), cx + px(xy[0] * 1.45), cy - px(xy[1] * 1.45));
            });
        }
    }

    private void tool(Loaded loaded, int cx, int cy) {
        int number = loaded.number();
        gc.setBackground(Inks.mixed(Ink.tool(number), Ink.PAPER, 0.35));
        gc.setForeground(Inks.mixed(Ink.tool(number), Ink.GRAPHITE, 0.6));
        gc.setLineWidth(1);
        gc.setLineStyle(Ink.toolRound(number) == 0 ? SWT.LINE_SOLID : SWT.LINE_DASH);
        double round = ToolOutlines.roundDiameter(loaded.tool());
        if (round > 0) {
            circle(cx, cy, Math.max(round, 2 / pxPerMm), true);
            return;
        }
        Viewport view = new Viewport(pxPerMm, -cx / pxPerMm, cy / pxPerMm);
        for (Outline line : ToolOutlines.of(loaded.tool())) {
            int[] points = pixels(line.placed(loaded.angleDeg(), 0, 0), view);
            gc.fillPolygon(points);
            gc.drawPolygon(points);
        }
        if (loaded.turns()) {
            turnArrow(cx, cy, ToolOutlines.single(loaded.tool()).radius());
        }
    }

    /** A tool that turns: an arc with an arrow round it. */
    private void turnArrow(int cx, int cy, double radiusMm) {
        int r = px(radiusMm) + 6;
        Pen.thin(gc, Ink.ACCENT);
        gc.drawArc(cx - r, cy - r, 2 * r, 2 * r, 20, 70);
        Pen.arrow(gc, cx, cy - r, Math.toRadians(-10 + 20));
    }

    private static int[] pixels(Outline line, Viewport view) {
        int[] points = new int[line.xy().length];
        for (int k = 0; k < points.length; k += 2) {
            points[k] = view.px(line.xy()[k]);
            points[k + 1] = view.py(line.xy()[k + 1]);
        }
        return points;
    }

    /** The reference stands in the corner of the cell, its leader ends at the place (ISO 6433). */
    private void balloon(int number, Rectangle cell, int cx, int cy, double radiusMm) {
        int x = cell.x + PAD_PX + BALLOON_PX / 2;
        int y = cell.y + PAD_PX + lineHeight + 6 + BALLOON_PX / 2;
        double angle = Math.atan2(cy - y, cx - x);
        int r = px(radiusMm);
        double apart = Math.hypot(cx - x, cy - y);
        if (apart > r + BALLOON_PX / 2.0) {
            Pen.thin(gc, Ink.PENCIL);
            gc.drawLine(x, y, (int) (x + (apart - r) * Math.cos(angle)), (int) (y + (apart - r) * Math.sin(angle)));
        }
        balloonAt(number, x, y);
    }

    private void balloonAt(int number, int x, int y) {
        ScenePainter.balloon(gc, number, x, y, BALLOON_PX);
    }

    private void circle(int cx, int cy, double diameterMm, boolean filled) {
        int d = px(diameterMm);
        if (filled) {
            gc.fillOval(cx - d / 2, cy - d / 2, d, d);
        }
        gc.drawOval(cx - d / 2, cy - d / 2, d, d);
    }

    private int px(double mm) {
        return (int) Math.round(mm * pxPerMm);
    }
}
