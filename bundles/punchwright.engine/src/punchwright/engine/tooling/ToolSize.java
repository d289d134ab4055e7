// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/**
 * What sets a tool apart that is not owned: shape and sizes to 0.01 mm, and the angle it must stand at where it cannot be turned.
 *
 * @param shape          shape of the punch
 * @param lengthMm       as {@code Tool.lengthMm}
 * @param widthMm        as {@code Tool.widthMm}
 * @param cornerRadiusMm corner radius; 0 where sharp
 * @param angleDeg       set angle, degrees; 0 where it can be turned or set in quarters
 * @param cluster        centres of the punches of a cluster; empty otherwise
 * @param contour        punch contour of a free-contour tool; null otherwise
 */
public record ToolSize(ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm, double angleDeg,
        List<Point> cluster, Contour contour) {

    private static final int USUAL_GRINDS = 8;
    /** Height of a form where no tool of its kind is owned, mm. */
    private static final double USUAL_FORM_MM = 3;

    public ToolSize {
        lengthMm = rounded(lengthMm);
        widthMm = rounded(widthMm);
        cornerRadiusMm = rounded(cornerRadiusMm);
        angleDeg = rounded(angleDeg);
        cluster = List.copyOf(cluster);
    }

    /** Neither cluster nor free contour. */
    public static ToolSize plain(ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm, double angleDeg) {
        return new ToolSize(shape, lengthMm, widthMm, cornerRadiusMm, angleDeg, List.of(), null);
    }

    /** Square where both sides are equal, else rectangle with the longer side first. */
    public static ToolSize sides(double aMm, double bMm) {
        return plain(rounded(aMm) == rounded(bMm) ? ToolShape.SQUARE : ToolShape.RECTANGLE, Math.max(aMm, bMm),
                Math.min(aMm, bMm), 0, 0);
    }

    private static double rounded(double mm) {
        return Math.rint(mm * 100) / 100;
    }

    /** A new tool of this size, flat ground, at a price; life as that of the owned tool nearest in shape and size. */
    public Tool make(List<Double> clearancesMm, List<Tool> owned, double price) {
        Tool near = nearest(owned);
        int grinds = owned.stream().mapToInt(Tool::grindsLeft).max().orElse(USUAL_GRINDS);
        double height = !shape.forms() ? 0 : near != null && near.shape() == shape ? near.formHeightMm() : USUAL_FORM_MM;
        return new Tool(id(), name(), shape, lengthMm, widthMm, cornerRadiusMm, AngleFreedom.ANY, angleDeg, clearancesMm,
                ShearKind.FLAT, 0, price, grinds, near == null ? 0 : near.grindCost(), near == null ? Map.of()
                        : near.hitsPerGrind(), 0, 1, height, cluster, contour, room(near));
    }

    /** A new form of the same kind keeps as clear as the owned one. */
    private ToolRoom room(Tool near) {
        return shape.forms() && near != null && near.shape() == shape ? near.room() : ToolRoom.NONE;
    }

    private Tool nearest(List<Tool> owned) {
        return owned.stream().filter(t -> t.shape().forms() == shape.forms())
                .min(Comparator.comparing((Tool t) -> t.shape() != shape).thenComparing(t -> t.hitsPerGrind().isEmpty())
                        .thenComparing(t -> Math.abs(t.lengthMm() - lengthMm) + Math.abs(t.widthMm() - widthMm))
                        .thenComparing(Tool::id))
                .orElse(null);
    }

    /** Diameter of the circle that holds it, mm. */
    public double diameterMm() {
        return ToolFootprint.circumscribedDiameterMm(make(List.of(), List.of(), 0));
    }

    /** From its sizes alone. */
    public String id() {
        StringBuilder id = new StringBuilder("new-" + shape.name().toLowerCase(Locale.ROOT).replace('_', '-') + "-"
                + number(lengthMm));
        if (widthMm != lengthMm) {
            id.append('x').append(number(widthMm));
        }
        if (cornerRadiusMm > 0) {
            id.append("-r").append(number(cornerRadiusMm));
        }
        if (angleDeg > 0) {
            id.append("-at").append(number(angleDeg));
        }
        if (!cluster.isEmpty()) {
            id.append("-n").append(cluster.size()).append('-').append(spread());
        }
        if (contour != null) {
            id.append('-').append(number(contour.areaMm2())).append('-').append(number(contour.lengthMm()));
        }
        return id.toString();
    }

    /** As a person names it. */
    public String name() {
        String word = shape.name().charAt(0) + shape.name().substring(1).toLowerCase(Locale.ROOT).replace('_', ' ');
        String size = widthMm == lengthMm ? number(lengthMm) : number(lengthMm) + " x " + number(widthMm);
        String round = shape == ToolShape.ROUND ? "\u2300" : "";
        String corner = cornerRadiusMm > 0 ? " R" + number(cornerRadiusMm) : "";
        String angle = angleDeg > 0 ? " at " + number(angleDeg) + "\u00b0" : "";
        return cluster.isEmpty() ? word + " " + round + size + corner + angle
                : "Cluster of " + cluster.size() + ", " + size + " over " + spread().replace("x", " x ") + angle;
    }

    /** Width and height over the centres of a cluster's punches. */
    private String spread() {
        double x = cluster.stream().mapToDouble(Point::x).max().orElse(0) - cluster.stream().mapToDouble(Point::x).min()
                .orElse(0);
        double y = cluster.stream().mapToDouble(Point::y).max().orElse(0) - cluster.stream().mapToDouble(Point::y).min()
                .orElse(0);
        return number(x) + "x" + number(y);
    }

    private static String number(double mm) {
        String s = String.format(Locale.ROOT, "%.2f", mm);
        return s.replaceAll("\\.?0+$", "");
    }
}
