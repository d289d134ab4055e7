// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.ToolShape;

/** The sizes of a tool that could be bought, gathering for which parts, with which die clearances. */
final class Draft {

    /** Needs within this ratio share a die: the wider is then no more than a quarter off. */
    private static final double SHARED = 1.25;
    private static final int NAMED = 3;

    private final ToolShape shape;
    private final double lengthMm;
    private final double widthMm;
    private final double cornerRadiusMm;
    private final double angleDeg;
    private final List<Point> cluster;
    private final Contour contour;
    private final TreeSet<Double> needs = new TreeSet<>();
    private final TreeSet<String> parts = new TreeSet<>();

    Draft(ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm, double angleDeg, List<Point> cluster,
            Contour contour) {
        this.shape = shape;
        this.lengthMm = rounded(lengthMm);
        this.widthMm = rounded(widthMm);
        this.cornerRadiusMm = rounded(cornerRadiusMm);
        this.angleDeg = rounded(angleDeg);
        this.cluster = List.copyOf(cluster);
        this.contour = contour;
    }

    static Draft plain(ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm, double angleDeg) {
        return new Draft(shape, lengthMm, widthMm, cornerRadiusMm, angleDeg, List.of(), null);
    }

    private static double rounded(double mm) {
        return Math.rint(mm * 100) / 100;
    }

    void wanted(String part, double clearanceMm) {
        parts.add(part);
        needs.add(Math.rint(clearanceMm * 100) / 100);
    }

    /** Dies to buy with it, mm, ascending. */
    List<Double> clearances() {
        List<Double> dies = new ArrayList<>();
        for (double need : needs) {
            if (dies.isEmpty() || need > SHARED * dies.getLast() + 1e-9) {
                dies.add(need);
            }
        }
        return dies;
    }

    String why() {
        List<String> named = parts.stream().limit(NAMED).toList();
        int more = parts.size() - named.size();
        return String.join(", ", named) + (more > 0 ? " and " + more + " more" : "");
    }

    /** What sets it apart, from its sizes alone. */
    String id() {
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

    /** Width and height over the centres of a cluster's punches. */
    private String spread() {
        double x = cluster.stream().mapToDouble(Point::x).max().orElse(0) - cluster.stream().mapToDouble(Point::x).min()
                .orElse(0);
        double y = cluster.stream().mapToDouble(Point::y).max().orElse(0) - cluster.stream().mapToDouble(Point::y).min()
                .orElse(0);
        return number(x) + "x" + number(y);
    }

    String name() {
        String word = shape.name().charAt(0) + shape.name().substring(1).toLowerCase(Locale.ROOT).replace('_', ' ');
        String size = widthMm == lengthMm ? number(lengthMm) : number(lengthMm) + " x " + number(widthMm);
        String round = shape == ToolShape.ROUND ? "\u2300" : "";
        String corner = cornerRadiusMm > 0 ? " R" + number(cornerRadiusMm) : "";
        String angle = angleDeg > 0 ? " at " + number(angleDeg) + "\u00b0" : "";
        return cluster.isEmpty() ? word + " " + round + size + corner + angle
                : "Cluster of " + cluster.size() + ", " + size + " over " + spread().replace("x", " x ") + angle;
    }

    private static String number(double mm) {
        String s = String.format(Locale.ROOT, "%.2f", mm);
        return s.replaceAll("\\.?0+$", "");
    }

    ToolShape shape() {
        return shape;
    }

    double lengthMm() {
        return lengthMm;
    }

    double widthMm() {
        return widthMm;
    }

    double cornerRadiusMm() {
        return cornerRadiusMm;
    }

    double angleDeg() {
        return angleDeg;
    }

    List<Point> cluster() {
        return cluster;
    }

    Contour contour() {
        return contour;
    }
}
