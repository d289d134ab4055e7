// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import java.util.ArrayList;
import java.util.List;

import punchwright.model.shop.ClusterPosition;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.ui.sheet.Outline;

/** The cross-section of a tool about its axis, for pictures, in mm. Plain geometry of the model's dimensions. */
public final class ToolOutlines {

    private static final int CHORDS = 64;

    private ToolOutlines() {
    }

    /** Every closed line of the tool: one, or one for each punch of a cluster. */
    public static List<Outline> of(Tool tool) {
        if (tool.getShape() != ToolShape.CLUSTER) {
            return List.of(one(tool.getShape(), tool.getLengthMm(), width(tool), tool.getCornerRadiusMm()));
        }
        List<Outline> punches = new ArrayList<>();
        for (ClusterPosition at : tool.getPositions()) {
            Outline punch = one(tool.getClusterShape(), tool.getLengthMm(), width(tool), tool.getCornerRadiusMm());
            punches.add(punch.placed(0, at.getXMm(), at.getYMm()));
        }
        return punches.isEmpty() ? List.of(circle(tool.getLengthMm() / 2)) : punches;
    }

    /** The tool as one line: for a cluster the box round its punches. */
    public static Outline single(Tool tool) {
        List<Outline> lines = of(tool);
        if (lines.size() == 1) {
            return lines.get(0);
        }
        double[] box = { 0, 0, 0, 0 };
        for (Outline line : lines) {
            double[] b = line.bounds();
            box = new double[] { Math.min(box[0], b[0]), Math.min(box[1], b[1]), Math.max(box[2], b[2]), Math.max(box[3], b[3]) };
        }
        return new Outline(new double[] { box[0], box[1], box[2], box[1], box[2], box[3], box[0], box[3] });
    }

    /** Diameter when the tool's section is a circle, else 0. */
    public static double roundDiameter(Tool tool) {
        return isRound(tool.getShape()) ? tool.getLengthMm() : 0;
    }

    private static boolean isRound(ToolShape shape) {
        return switch (shape) {
            case ROUND, COLLAR, COUNTERSINK, EMBOSS, MARKING, ROLLER -> true;
            default -> false;
        };
    }

    private static double width(Tool tool) {
        return tool.getWidthMm() > 0 ? tool.getWidthMm() : tool.getLengthMm();
    }

    private static Outline one(ToolShape shape, double length, double width, double radius) {
        return switch (shape) {
            case SQUARE -> rounded(length, length, radius);
            case OBROUND -> rounded(length, width, width / 2);
            case SINGLE_FLAT -> flats(length, width, false);
            case DOUBLE_FLAT -> flats(length, width, true);
            case HEXAGON -> hexagon(length);
            case TRIANGLE -> triangle(length);
            case CORNER_RADIUS -> corner(length, radius);
            case RECTANGLE, SLITTING, LOUVRE, LANCE, FREE_CONTOUR -> rounded(length, width, radius);
            default -> circle(length / 2);
        };
    }

    private static Outline circle(double radius) {
        Line line = new Line();
        line.arc(0, 0, radius, 0, 360 - 360.0 / CHORDS);
        return line.outline();
    }

    private static Outline rounded(double length, double width, double radius) {
        double r = Math.min(radius, Math.min(length, width) / 2);
        double x = length / 2 - r;
        double y = width / 2 - r;
        Line line = new Line();
        if (r <= 0) {
            return new Outline(new double[] { -x, -y, x, -y, x, y, -x, y });
        }
        line.arc(x, -y, r, -90, 0);
        line.arc(x, y, r, 0, 90);
        line.arc(-x, y, r, 90, 180);
        line.arc(-x, -y, r, 180, 270);
        return line.outline();
    }

    /**
     * A circle of the length as diameter with one flat below, or flats below and above; the width is the height over the flats.
     */
    private static Outline flats(double diameter, double height, boolean both) {
        double r = diameter / 2;
        double flatAt = both ? height / 2 : height - r;
        double a = Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, flatAt / r))));
        Line line = new Line();
        if (both) {
            line.arc(0, 0, r, -a, a);
            line.arc(0, 0, r, 180 - a, 180 + a);
        } else {
            line.arc(0, 0, r, -a, 180 + a);
        }
        return line.outline();
    }

    private static Outline hexagon(double acrossFlats) {
        Line line = new Line();
        for (int k = 0; k < 6; k++) {
            line.polar(acrossFlats / Math.sqrt(3), 60.0 * k);
        }
        return line.outline();
    }

    private static Outline triangle(double side) {
        Line line = new Line();
        for (int k = 0; k < 3; k++) {
            line.polar(side / Math.sqrt(3), 90 + 120.0 * k);
        }
        return line.outline();
    }

    /** A square whose sides are hollowed: the four quarter circles it leaves are the corners it makes. */
    private static Outline corner(double side, double radius) {
        double h = side / 2;
        double r = Math.min(radius > 0 ? radius : h / 2, h);
        Line line = new Line();
        line.hollow(h, -h, r, 180, 90);
        line.hollow(h, h, r, 270, 180);
        line.hollow(-h, h, r, 360, 270);
        line.hollow(-h, -h, r, 90, 0);
        return line.outline();
    }

    /** Collects points. */
    private static final class Line {
        private final List<Double> xy = new ArrayList<>();

        void arc(double cx, double cy, double r, double fromDeg, double toDeg) {
            int pieces = Math.max(2, (int) Math.ceil(Math.abs(toDeg - fromDeg) / (360.0 / CHORDS) - 1e-9));
            for (int k = 0; k <= pieces; k++) {
                point(cx, cy, r, fromDeg + (toDeg - fromDeg) * k / pieces);
            }
        }

        void hollow(double cx, double cy, double r, double fromDeg, double toDeg) {
            arc(cx, cy, r, fromDeg, toDeg);
        }

        void polar(double r, double deg) {
            point(0, 0, r, deg);
        }

        private void point(double cx, double cy, double r, double deg) {
            xy.add(cx + r * Math.cos(Math.toRadians(deg)));
            xy.add(cy + r * Math.sin(Math.toRadians(deg)));
        }

        Outline outline() {
            return new Outline(xy.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }
}
