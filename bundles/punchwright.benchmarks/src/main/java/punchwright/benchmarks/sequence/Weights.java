// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.sequence;

import java.util.Locale;
import java.util.stream.IntStream;

import punchwright.engine.sequence.TourBound;

/** Distances of a routing instance as TSPLIB 95 defines them (Reinelt, Universitaet Heidelberg, section 2; from memory). */
final class Weights {

    /** Costs that follow from the separation of two points alone. */
    private record Plane(double[] x, double[] y, Rounding rounding) implements TourBound.Costs {
        @Override
        public double cost(int i, int j) {
            return rounding.of(x[i] - x[j], y[i] - y[j]);
        }

        @Override
        public double least(double dx, double dy) {
            return rounding.of(dx, dy);
        }
    }

    /** Costs given pair by pair; the separation says nothing. */
    private record Matrix(double[][] cost) implements TourBound.Costs {
        @Override
        public double cost(int i, int j) {
            return cost[i][j];
        }

        @Override
        public double least(double dx, double dy) {
            return 0;
        }
    }

    private interface Rounding {
        double of(double dx, double dy);
    }

    private static final double EARTH_RADIUS_KM = 6378.388;

    private Weights() {
    }

    /** @throws IllegalArgumentException for a type that is not known */
    static TourBound.Costs of(String type, double[] x, double[] y, double[][] matrix) {
        return switch (type.toUpperCase(Locale.ROOT)) {
            case "EUC_2D" -> plane(x, y, (dx, dy) -> Math.floor(Math.sqrt(dx * dx + dy * dy) + 0.5));
            case "CEIL_2D" -> plane(x, y, (dx, dy) -> Math.ceil(Math.sqrt(dx * dx + dy * dy)));
            case "MAX_2D" -> plane(x, y, (dx, dy) -> Math.max(Math.floor(Math.abs(dx) + 0.5), Math.floor(Math.abs(dy) + 0.5)));
            case "MAN_2D" -> plane(x, y, (dx, dy) -> Math.floor(Math.abs(dx) + Math.abs(dy) + 0.5));
            case "ATT" -> plane(x, y, (dx, dy) -> Math.ceil(Math.sqrt((dx * dx + dy * dy) / 10)));
            case "GEO" -> new Matrix(globe(x, y));
            case "EXPLICIT" -> new Matrix(matrix);
            default -> throw new IllegalArgumentException("distances of type " + type + " are not read");
        };
    }

    /** Edges that must stay cost nothing, as in the published length of {@code linhp318}. */
    static TourBound.Costs free(TourBound.Costs costs, int[] partner) {
        if (IntStream.of(partner).allMatch(p -> p < 0)) {
            return costs;
        }
        int n = partner.length;
        return new Matrix(IntStream.range(0, n).mapToObj(i -> IntStream.range(0, n)
                .mapToDouble(j -> partner[i] == j ? 0 : costs.cost(i, j)).toArray()).toArray(double[][]::new));
    }

    private static TourBound.Costs plane(double[] x, double[] y, Rounding rounding) {
        return new Plane(x, y, rounding);
    }

    static boolean isPlane(TourBound.Costs costs) {
        return costs instanceof Plane;
    }

    private static double[][] globe(double[] x, double[] y) {
        double[][] d = new double[x.length][x.length];
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < i; j++) {
                d[i][j] = kilometres(radians(x[i]), radians(y[i]), radians(x[j]), radians(y[j]));
                d[j][i] = d[i][j];
            }
        }
        return d;
    }

    /** Degrees and minutes written as DDD.MM. */
    private static double radians(double degreesAndMinutes) {
        int degrees = (int) degreesAndMinutes;
        return 3.141592 * (degrees + 5 * (degreesAndMinutes - degrees) / 3) / 180;
    }

    private static double kilometres(double latA, double lonA, double latB, double lonB) {
        double q1 = Math.cos(lonA - lonB);
        double q2 = Math.cos(latA - latB);
        double q3 = Math.cos(latA + latB);
        return (int) (EARTH_RADIUS_KM * Math.acos(0.5 * ((1 + q1) * q2 - (1 - q1) * q3)) + 1);
    }
}
