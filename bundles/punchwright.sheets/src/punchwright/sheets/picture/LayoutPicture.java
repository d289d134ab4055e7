// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import javax.imageio.ImageIO;

import punchwright.model.plan.Hit;
import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.MicroJoint;
import punchwright.model.plan.Placement;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Clamps;
import punchwright.model.work.Part;
import punchwright.sheets.PartOutline;

/**
 * A layout as a drawing: sheet and part edges thick, hits thin in the colour of their tool, clamps hatched, limits of the
 * holdings long-dash-dot, tools called out by balloons, size by dimensions. Paper size in mm, resolution 400 dots an inch in
 * a few plain colours without blending: line art stays sharp in print and small in the file.
 */
public final class LayoutPicture {

    private static final double PIXELS_PER_MM = 400 / 25.4;
    private static final double LEFT = 14;
    private static final double RIGHT = 8;
    private static final double TOP = 16;
    private static final double BOTTOM = 20;
    private static final double BALLOON = 6.5;
    /** Where a part's letter may stand, as shares of its length and width, the middle first. */
    private static final double[][] LETTER_PLACES = {{.5, .5}, {.5, .35}, {.5, .65}, {.35, .5}, {.65, .5}, {.35, .35}, {.65, .65},
        {.35, .65}, {.65, .35}, {.5, .2}, {.5, .8}, {.2, .5}, {.8, .5}, {.2, .2}, {.8, .8}, {.2, .8}, {.8, .2}};

    private final Layout layout;
    private final Clamps clamps;
    private final Function<Part, PartOutline> outlines;
    private final List<Part> parts;
    private final double scale;
    private final double widthMm;
    private final double heightMm;
    private Pencil pencil;

    /**
     * @param clamps     of the machine; null draws none
     * @param outlines   edges of the parts; null for a part that has none to show
     * @param parts      the parts in the order of their letters
     * @param maxWidthMm  paper width
     * @param maxHeightMm largest paper height
     */
    public LayoutPicture(Layout layout, Clamps clamps, Function<Part, PartOutline> outlines, List<Part> parts, double maxWidthMm,
            double maxHeightMm) {
        this.layout = layout;
        this.clamps = clamps;
        this.outlines = outlines;
        this.parts = parts;
        this.scale = Math.min((maxWidthMm - LEFT - RIGHT) / layout.getLengthMm(),
                (maxHeightMm - TOP - BOTTOM) / layout.getWidthMm());
        this.widthMm = maxWidthMm;
        this.heightMm = layout.getWidthMm() * scale + TOP + BOTTOM;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** The letter that stands for a part in the picture: A, B, ... Z, AA. */
    public static String letter(int index) {
        return index < 26 ? String.valueOf((char) ('A' + index)) : letter(index / 26 - 1) + letter(index % 26);
    }

    /** The picture as PNG. */
    public byte[] png() throws IOException {
        BufferedImage image = new BufferedImage((int) Math.ceil(widthMm * PIXELS_PER_MM),
                (int) Math.ceil(heightMm * PIXELS_PER_MM),
                BufferedImage.TYPE_BYTE_INDEXED, Palette.colours(Pencil.GRAPHITE, Pencil.PETROL));
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_OFF);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        pencil = new Pencil(g, heightMm, PIXELS_PER_MM);
        draw();
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    private void draw() {
        holdings();
        hits();
        placements();
        joints();
        pencil.color(Pencil.GRAPHITE).thick().draw(new Rectangle2D.Double(x(0), y(0), layout.getLengthMm() * scale,
                layout.getWidthMm() * scale));
        origin();
        dimensions();
        balloons();
    }

    private double x(double mm) {
        return LEFT + (widthMm - LEFT - RIGHT - layout.getLengthMm() * scale) / 2 + mm * scale;
    }

    private double y(double mm) {
        return BOTTOM + mm * scale;
    }

    private AffineTransform onPaper() {
        return new AffineTransform(scale, 0, 0, scale, x(0), y(0));
    }

    private void hits() {
        Map<ToolUse, Shape> shapes = new LinkedHashMap<>();
        for (Hit hit : layout.getHits()) {
            if (hit.getToolUse() == null || hit.getToolUse().getTool() == null) {
                continue;
            }
            Shape shape = shapes.computeIfAbsent(hit.getToolUse(), u -> Footprint.of(u.getTool()));
            AffineTransform at = onPaper();
            at.translate(hit.getXMm(), hit.getYMm());
            at.rotate(Math.toRadians(hit.getAngleDeg()));
            Shape print = at.createTransformedShape(shape);
            int balloon = hit.getToolUse().getBalloon();
            pencil.color(Palette.ground(balloon)).fill(print);
            pencil.color(Palette.line(balloon));
            (Palette.repeated(balloon) ? pencil.dashed() : pencil.thin()).draw(print);
        }
    }

    private void placements() {
        for (Placement placement : layout.getPlacements()) {
            PartOutline outline = outlines.apply(placement.getPart());
            AffineTransform at = onPaper();
            at.translate(placement.getXMm(), placement.getYMm());
            at.rotate(Math.toRadians(placement.getAngleDeg()));
            at.scale(placement.isMirrored() ? -1 : 1, 1);
            List<Shape> edges = new ArrayList<>();
            for (double[] contour : outline == null ? List.<double[]>of() : outline.contours()) {
                edges.add(at.createTransformedShape(path(contour)));
                pencil.color(Pencil.GRAPHITE).thick().draw(edges.get(edges.size() - 1));
            }
            double[] origin = {0, 0};
            at.transform(origin, 0, origin, 0, 1);
            letter(letter(Math.max(0, parts.indexOf(placement.getPart()))), edges, origin);
        }
    }

    /** The part's letter where it covers no opening, else in the middle; at the origin of a part without edges. */
    private void letter(String letter, List<Shape> edges, double[] origin) {
        pencil.color(Pencil.PETROL);
        if (edges.isEmpty()) {
            pencil.label(letter, origin[0], origin[1], 2.5);
            return;
        }
        Rectangle2D box = edges.get(0).getBounds2D();
        double height = Math.min(3.5, Math.max(1.2, Math.min(box.getWidth(), box.getHeight()) / 3));
        double half = Lettering.width(letter, height) / 2 + 0.4;
        for (double[] place : LETTER_PLACES) {
            double x = box.getX() + place[0] * box.getWidth();
            double y = box.getY() + place[1] * box.getHeight();
            Rectangle2D field = new Rectangle2D.Double(x - half, y - height / 2 - 0.4, 2 * half, height + 0.8);
            if (edges.get(0).contains(field) && edges.stream().skip(1).noneMatch(e -> e.intersects(field))) {
                pencil.textCentred(letter, x, y - height / 2, height);
                return;
            }
        }
        pencil.label(letter, box.getCenterX(), box.getCenterY(), height);
    }

    private static Path2D path(double[] xy) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i + 1 < xy.length; i += 2) {
            if (i == 0) {
                path.moveTo(xy[0], xy[1]);
            } else {
                path.lineTo(xy[i], xy[i + 1]);
            }
        }
        path.closePath();
        return path;
    }

    /** Micro-joints as small filled marks. */
    private void joints() {
        pencil.color(Pencil.GRAPHITE);
        for (MicroJoint joint : layout.getMicroJoints()) {
            pencil.dot(x(joint.getXMm()), y(joint.getYMm()), 0.9);
        }
    }

    /** Clamps hatched at their edge, each holding's with its number, and the limits of what each reaches. */
    private void holdings() {
        if (layout.getClampZoneMm() > 0) {
            pencil.color(Pencil.GRAPHITE).dashed().line(x(0), y(layout.getClampZoneMm()), x(layout.getLengthMm()),
                    y(layout.getClampZoneMm()));
        }
        for (Holding holding : layout.getHoldings()) {
            limits(holding);
            clamps(holding);
        }
    }

    private void limits(Holding holding) {
        pencil.color(Pencil.GRAPHITE);
        for (double limit : new double[] {holding.getReachMinXMm(), holding.getReachMaxXMm()}) {
            if (limit > 0 && limit < layout.getLengthMm()) {
                pencil.longDashDot().line(x(limit), y(0) - 3, x(limit), y(layout.getWidthMm()) + 3);
            }
        }
    }

    private void clamps(Holding holding) {
        if (clamps == null) {
            return;
        }
        double row = layout.getHoldings().size() > 1 ? 2.2 * (holding.getIndex() - 1) : 0;
        for (double centre : holding.getClampPositionsMm()) {
            double atX = holding.isTurned() ? layout.getLengthMm() - centre : centre;
            double half = clamps.getWidthMm() / 2 * scale;
            double depth = Math.max(1, clamps.getDepthMm() * scale);
            Rectangle2D box = holding.isTurned()
                    ? new Rectangle2D.Double(x(atX) - half, y(layout.getWidthMm()) - depth, 2 * half, depth + 2.5)
                    : new Rectangle2D.Double(x(atX) - half, y(0) - 2.5, 2 * half, depth + 2.5);
            pencil.color(Pencil.GRAPHITE).hatch(box, 1.4);
            pencil.thin().draw(box);
            pencil.color(Pencil.PETROL).textCentred(String.valueOf(holding.getIndex()), x(atX),
                    holding.isTurned() ? y(layout.getWidthMm()) + 3.2 + row : y(0) - 5 - row, 1.8);
        }
    }

    private void origin() {
        pencil.color(Pencil.PETROL).thin();
        pencil.dot(x(0), y(0), 1.4);
        pencil.line(x(0), y(0), x(0) + 7, y(0));
        pencil.line(x(0), y(0), x(0), y(0) + 7);
        pencil.label("X", x(0) + 8.5, y(0), 1.8);
        pencil.label("Y", x(0), y(0) + 8.5, 1.8);
    }

    private void dimensions() {
        double below = y(0) - 14;
        double beside = x(0) - 7;
        pencil.color(Pencil.GRAPHITE).thin();
        pencil.line(x(0), y(0) - 1, x(0), below - 1.5);
        pencil.line(x(layout.getLengthMm()), y(0) - 1, x(layout.getLengthMm()), below - 1.5);
        pencil.line(x(0) - 1, y(0), beside - 1.5, y(0));
        pencil.line(x(0) - 1, y(layout.getWidthMm()), beside - 1.5, y(layout.getWidthMm()));
        pencil.dimension(x(0), below, x(layout.getLengthMm()), below, plain(layout.getLengthMm()));
        pencil.dimension(beside, y(0), beside, y(layout.getWidthMm()), plain(layout.getWidthMm()));
    }

    private static String plain(double mm) {
        return mm == Math.rint(mm) ? String.valueOf((long) mm) : String.valueOf(mm);
    }

    /** One balloon for each tool above the sheet, with a leader to its hit that lies highest. */
    private void balloons() {
        Map<ToolUse, Hit> shown = new LinkedHashMap<>();
        for (Hit hit : layout.getHits()) {
            if (hit.getToolUse() != null) {
                shown.merge(hit.getToolUse(), hit, (a, b) -> b.getYMm() > a.getYMm() + 1e-6 ? b : a);
            }
        }
        List<Hit> ordered = new ArrayList<>(shown.values());
        ordered.sort(Comparator.comparingDouble(Hit::getXMm).thenComparingInt(h -> h.getToolUse().getBalloon()));
        double[] places = spread(ordered.stream().mapToDouble(h -> x(h.getXMm())).toArray());
        double top = y(layout.getWidthMm()) + 10;
        for (int i = 0; i < places.length; i++) {
            Hit hit = ordered.get(i);
            int balloon = hit.getToolUse().getBalloon();
            pencil.color(Pencil.GRAPHITE).thin().line(places[i], top, x(hit.getXMm()), y(hit.getYMm()));
            pencil.dot(x(hit.getXMm()), y(hit.getYMm()), 1);
            pencil.color(Palette.line(balloon)).thick();
            pencil.balloon(String.valueOf(balloon), places[i], top, BALLOON);
        }
    }

    /** Places for balloons in order, no two nearer than a balloon's width, near their wishes. */
    private double[] spread(double[] wishes) {
        double[] places = wishes.clone();
        double gap = Math.min(BALLOON + 1, (widthMm - 2 * BALLOON) / Math.max(1, wishes.length));
        for (int i = 1; i < places.length; i++) {
            places[i] = Math.max(places[i], places[i - 1] + gap);
        }
        double right = widthMm - BALLOON / 2 - 1;
        for (int i = places.length - 1; i >= 0; i--) {
            places[i] = Math.min(places[i], right);
            right = places[i] - gap;
        }
        return places;
    }
}
