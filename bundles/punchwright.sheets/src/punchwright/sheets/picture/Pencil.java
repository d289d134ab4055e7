// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Draws in mm of paper, origin at the lower left, with line manners of ISO 128-2: continuous thick and thin (2 : 1), dashed,
 * long-dash-dot.
 */
final class Pencil {

    static final double THICK_MM = 0.35;
    static final double THIN_MM = 0.18;
    static final Color GRAPHITE = new Color(0x26, 0x2B, 0x2E);
    static final Color PETROL = new Color(0x0B, 0x4F, 0x5C);

    private final Graphics2D graphics;
    private final double paperHeightMm;
    private final double pixelsPerMm;

    Pencil(Graphics2D graphics, double paperHeightMm, double pixelsPerMm) {
        this.graphics = graphics;
        this.paperHeightMm = paperHeightMm;
        this.pixelsPerMm = pixelsPerMm;
    }

    Pencil color(Color color) {
        graphics.setColor(color);
        return this;
    }

    Pencil thick() {
        return line(THICK_MM);
    }

    Pencil thin() {
        return line(THIN_MM);
    }

    Pencil dashed() {
        return line(THIN_MM, 2.0f, 1.0f);
    }

    /** Long-dash-dot: centre lines and limits. */
    Pencil longDashDot() {
        return line(THIN_MM, 5.0f, 0.9f, 0.4f, 0.9f);
    }

    void draw(Shape shapeMm) {
        graphics.draw(toPaper().createTransformedShape(shapeMm));
    }

    void fill(Shape shapeMm) {
        graphics.fill(toPaper().createTransformedShape(shapeMm));
    }

    void line(double x1, double y1, double x2, double y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    void dot(double x, double y, double diameter) {
        fill(new Ellipse2D.Double(x - diameter / 2, y - diameter / 2, diameter, diameter));
    }

    /** Text with its middle at x and its base line at y. */
    void textCentred(String text, double x, double y, double height) {
        text(text, x - (Lettering.width(text, height) - height * 0.25) / 2, y, height);
    }

    void text(String text, double x, double y, double height) {
        line(Math.max(THIN_MM, height / 11));
        draw(Lettering.path(text, x, y, height, 1));
    }

    /** Text with a clear ground, so that lines under it do not disturb. */
    void label(String text, double x, double y, double height) {
        double half = Lettering.width(text, height) / 2;
        Color own = graphics.getColor();
        color(Color.WHITE).fill(new Rectangle2D.Double(x - half - 0.4, y - height / 2 - 0.6, 2 * half + 0.6, height + 1.2));
        color(own);
        textCentred(text, x, y - height / 2, height);
    }

    /** Item reference after ISO 6433: a circle with the number. */
    void balloon(String number, double x, double y, double diameter) {
        Ellipse2D circle = new Ellipse2D.Double(x - diameter / 2, y - diameter / 2, diameter, diameter);
        Color own = graphics.getColor();
        color(Color.WHITE).fill(circle);
        color(own).line(2 * THICK_MM).draw(circle);
        color(GRAPHITE).textCentred(number, x, y - diameter * 0.21, diameter * 0.42);
    }

    /** Hatching at 45 degrees within a shape. */
    void hatch(Rectangle2D area, double pitch) {
        thin();
        Shape clip = graphics.getClip();
        graphics.clip(toPaper().createTransformedShape(area));
        double size = area.getWidth() + area.getHeight();
        for (double d = pitch / 2; d < size; d += pitch) {
            line(area.getMinX() + d, area.getMinY(), area.getMinX() + d - area.getHeight(), area.getMaxY());
        }
        graphics.setClip(clip);
    }

    /** Dimension along a line with closed arrowheads, after ISO 129-1; text above the line. */
    void dimension(double x1, double y1, double x2, double y2, String text) {
        thin();
        line(x1, y1, x2, y2);
        double angle = Math.atan2(y2 - y1, x2 - x1);
        arrow(x1, y1, angle);
        arrow(x2, y2, angle + Math.PI);
        AffineTransform turned = AffineTransform.getTranslateInstance((x1 + x2) / 2, (y1 + y2) / 2);
        turned.rotate(angle);
        double height = 2.5;
        double half = (Lettering.width(text, height) - height * 0.25) / 2;
        line(height / 11);
        draw(turned.createTransformedShape(Lettering.path(text, -half, 0.9, height, 1)));
    }

    private void arrow(double x, double y, double angle) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x + 2.5 * Math.cos(angle + 0.13), y + 2.5 * Math.sin(angle + 0.13));
        head.lineTo(x + 2.5 * Math.cos(angle - 0.13), y + 2.5 * Math.sin(angle - 0.13));
        head.closePath();
        fill(head);
    }

    private Pencil line(double widthMm, float... dashMm) {
        float width = (float) (widthMm * pixelsPerMm);
        if (dashMm.length == 0) {
            graphics.setStroke(new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            return this;
        }
        float[] dash = new float[dashMm.length];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = (float) (dashMm[i] * pixelsPerMm);
        }
        graphics.setStroke(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0));
        return this;
    }

    private AffineTransform toPaper() {
        return new AffineTransform(pixelsPerMm, 0, 0, -pixelsPerMm, 0, paperHeightMm * pixelsPerMm);
    }
}
