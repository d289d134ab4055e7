// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

import punchwright.engine.advice.Price.Basis;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolShape;

/**
 * What tools, dies, holders and options cost.
 *
 * <p>A tool of a family with at least three owned of different size: least squares of price over the length of the punch's edge.
 * Else a table in units of the currency; common practice, no source: the engineer's own price goes before everything.
 */
final class PriceBook {

    /** A further die over the price of the whole tool. Common practice, no source. */
    static final double DIE_SHARE = 0.35;
    /** Each further punch of a cluster over the price of a single tool. Common practice, no source. */
    private static final double CLUSTER_SHARE = 0.35;
    private static final int LEAST = 3;

    private final AdviceJob job;

    PriceBook(AdviceJob job) {
        this.job = job;
    }

    /** A line through points by least squares. */
    record Fit(double base, double perMm, int points) {

        static Fit of(double[] x, double[] y) {
            int n = x.length;
            double mx = 0;
            double my = 0;
            for (int i = 0; i < n; i++) {
                mx += x[i] / n;
                my += y[i] / n;
            }
            double sxx = 0;
            double sxy = 0;
            for (int i = 0; i < n; i++) {
                sxx += (x[i] - mx) * (x[i] - mx);
                sxy += (x[i] - mx) * (y[i] - my);
            }
            double slope = sxx < 1e-9 ? Double.NaN : sxy / sxx;
            return new Fit(my - slope * mx, slope, n);
        }

        boolean usable() {
            return points >= LEAST && perMm >= 0;
        }

        double at(double x) {
            return base + perMm * x;
        }
    }

    /** Price of a new tool with a number of dies. */
    Price tool(Tool t, int dies) {
        Price one = t.shape() == ToolShape.CLUSTER ? cluster(t) : single(t);
        double value = round(one.value() * (1 + DIE_SHARE * (dies - 1)));
        return new Price(value, one.basis(), one.how() + (dies > 1 ? ", " + (dies - 1) + " more dies at 35 % each" : ""));
    }

    private Price cluster(Tool t) {
        boolean round = Math.abs(t.lengthMm() - t.widthMm()) < 1e-9;
        Tool punch = Tools.like(t, round ? ToolShape.ROUND : ToolShape.RECTANGLE);
        double value = single(punch).value() * (1 + CLUSTER_SHARE * (t.cluster().size() - 1));
        return new Price(value, Basis.TABLE, "a single tool and 35 % for each further punch, common practice");
    }

    private Price single(Tool t) {
        double edge = edgeMm(t);
        Fit fit = fit(o -> family(o.shape()) == family(t.shape()), edge);
        if (fit == null && !t.shape().forms()) {
            fit = fit(o -> !o.shape().forms() && o.shape() != ToolShape.CLUSTER, edge);
        }
        if (fit != null) {
            return new Price(fit.at(edge), Basis.FITTED, String.format(Locale.ROOT,
                    "least squares over %d tools owned: %.2f and %.3f per mm of edge, %.1f mm", fit.points(), fit.base(),
                    fit.perMm(), edge));
        }
        double value = t.shape().forms() ? 250 + 4 * Math.max(t.lengthMm(), t.widthMm()) : 60 + edge;
        return new Price(value, Basis.TABLE, "table of common practice");
    }

    /** A line through the tools owned that are asked for, when it gives a price within a third of what they cost. */
    private Fit fit(Predicate<Tool> like, double edge) {
        List<Tool> owned = job.tools().stream().filter(t -> t.price() > 0).filter(like).toList();
        Fit fit = Fit.of(array(owned, PriceBook::edgeMm), array(owned, Tool::price));
        double least = owned.stream().mapToDouble(Tool::price).min().orElse(0);
        return fit.usable() && fit.at(edge) > least / 3 ? fit : null;
    }

    private static double[] array(List<Tool> tools, ToDoubleFunction<Tool> f) {
        return tools.stream().mapToDouble(f).toArray();
    }

    private static double edgeMm(Tool t) {
        return ToolFootprint.of(t).stream().mapToDouble(c -> c.lengthMm()).sum();
    }

    /** Shapes that are priced alike. */
    private static int family(ToolShape shape) {
        return switch (shape) {
            case SQUARE, RECTANGLE, SLITTING -> ToolShape.RECTANGLE.ordinal();
            case SINGLE_FLAT, DOUBLE_FLAT, HEXAGON, TRIANGLE -> ToolShape.HEXAGON.ordinal();
            default -> shape.ordinal();
        };
    }

    Price die(Tool owned) {
        return owned.price() > 0
                ? new Price(round(DIE_SHARE * owned.price()), Basis.TABLE, "35 % of the tool's price, common practice")
                : new Price(round(DIE_SHARE * single(owned).value()), Basis.TABLE, "35 % of a like tool, common practice");
    }

    Price second(Tool owned) {
        return owned.price() > 0 ? new Price(owned.price(), Basis.FITTED, "the price of the one owned") : tool(owned, 1);
    }

    Price holder(Holder h) {
        double table = 500 + 250 * h.inserts() + (h.insertsTurn() ? 1500 : 0);
        List<AdviceJob.HolderPrice> same = job.holderPrices().stream().filter(p -> p.holderId().equals(h.id()) && p.price() > 0)
                .toList();
        return same.isEmpty() ? new Price(table, Basis.TABLE, "table of common practice")
                : new Price(same.getFirst().price(), Basis.FITTED, "the price of the one owned");
    }

    /** A place that turns 12 000, a magazine place 1500, an automatic change 45 000. */
    Price option(boolean turns, int places, boolean automatic) {
        return new Price((turns ? 12_000 : 0) + 1500.0 * places + (automatic ? 45_000 : 0), Basis.TABLE,
                "table of common practice");
    }

    private static double round(double value) {
        return Math.rint(value * 100) / 100;
    }
}
