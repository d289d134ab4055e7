// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.picture;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

import punchwright.model.shop.ClusterPosition;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;

/** What a tool leaves on the sheet at angle 0, about its centre, mm; for pictures only, never for checks. */
final class Footprint {

    private Footprint() {
    }

    static Shape of(Tool tool) {
        double l = Math.max(tool.getLengthMm(), 0.1);
        double w = tool.getWidthMm() > 0 ? tool.getWidthMm() : l;
        return tool.getShape() == ToolShape.CLUSTER ? cluster(tool, l, w) : single(tool.getShape(), l, w,
                tool.getCornerRadiusMm());
    }

    private static Shape cluster(Tool tool, double l, double w) {
        Area all = new Area();
        for (ClusterPosition p : tool.getPositions()) {
            Shape one = single(tool.getClusterShape(), l, w, tool.getCornerRadiusMm());
            all.add(new Area(AffineTransform.getTranslateInstance(p.getXMm(), p.getYMm()).createTransformedShape(one)));
        }
        return all;
    }

    private static Shape single(ToolShape shape, double l, double w, double radius) {
        return switch (shape) {
            case SQUARE -> new Rectangle2D.Double(-l / 2, -l / 2, l, l);
            case RECTANGLE, SLITTING, LOUVRE, LANCE, EMBOSS, ROLLER -> new RoundRectangle2D.Double(-l / 2, -w / 2, l, w,
                    2 * radius, 2 * radius);
            case OBROUND -> new RoundRectangle2D.Double(-l / 2, -w / 2, l, w, w, w);
            case SINGLE_FLAT -> flats(l, new Rectangle2D.Double(-l / 2, -l / 2, l, w));
            case DOUBLE_FLAT -> flats(l, new Rectangle2D.Double(-l / 2, -w / 2, l, w));
            case HEXAGON -> polygon(6, l / Math.sqrt(3), 0);
            case TRIANGLE -> polygon(3, l / Math.sqrt(3), Math.PI / 2);
            case CORNER_RADIUS -> cornerTool(l, w, radius);
            default -> new Ellipse2D.Double(-l / 2, -l / 2, l, l);
        };
    }

    private static Shape flats(double diameter, Rectangle2D window) {
        Area area = new Area(new Ellipse2D.Double(-diameter / 2, -diameter / 2, diameter, diameter));
        area.intersect(new Area(window));
        return area;
    }

    private static Shape cornerTool(double l, double w, double radius) {
        Area area = new Area(new Rectangle2D.Double(-l / 2, -w / 2, l, w));
        for (int i = 0; i < 4; i++) {
            double cx = i % 2 == 0 ? -l / 2 : l / 2;
            double cy = i < 2 ? -w / 2 : w / 2;
            area.subtract(new Area(new Ellipse2D.Double(cx - radius, cy - radius, 2 * radius, 2 * radius)));
        }
        return area;
    }

    private static Shape polygon(int corners, double radius, double startRad) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < corners; i++) {
            double a = startRad + 2 * Math.PI * i / corners;
            if (i == 0) {
                path.moveTo(radius * Math.cos(a), radius * Math.sin(a));
            } else {
                path.lineTo(radius * Math.cos(a), radius * Math.sin(a));
            }
        }
        path.closePath();
        return path;
    }
}
