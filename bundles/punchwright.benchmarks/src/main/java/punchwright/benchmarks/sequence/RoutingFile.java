// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.sequence;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.sequence.TourBound;

/**
 * A routing instance of TSPLIB: nodes with coordinates or with a matrix of distances, and edges that must stay.
 *
 * @param name     as the file's name says
 * @param x        coordinates, zeros where there are none
 * @param y        coordinates, zeros where there are none
 * @param costs    distances
 * @param partner  for each node the node it must stay next to, or -1
 */
record RoutingFile(String name, double[] x, double[] y, TourBound.Costs costs, int[] partner) {

    private static final class Reading {
        private final Map<String, String> head = new LinkedHashMap<>();
        private final Map<String, List<Double>> sections = new LinkedHashMap<>();

        void line(String line, String[] section) {
            String text = line.trim();
            int colon = text.indexOf(':');
            if (text.endsWith("_SECTION")) {
                section[0] = text;
                sections.put(text, new ArrayList<>());
            } else if (colon > 0 && Character.isLetter(text.charAt(0))) {
                head.put(text.substring(0, colon).trim().toUpperCase(Locale.ROOT), text.substring(colon + 1).trim());
            } else if (section[0] != null && !text.isEmpty() && !text.equals("EOF")) {
                for (String number : text.split("\\s+")) {
                    sections.get(section[0]).add(Double.valueOf(number));
                }
            }
        }

        List<Double> section(String name) {
            return sections.getOrDefault(name, List.of());
        }
    }

    /** @throws IOException when the file cannot be read or is no instance; the message names it and what is wrong */
    static RoutingFile read(Path file) throws IOException {
        Reading r = new Reading();
        try {
            String[] section = new String[1];
            Files.readAllLines(file, StandardCharsets.ISO_8859_1).forEach(l -> r.line(l, section));
            return of(file.getFileName().toString().replaceAll("\\.[^.]*$", ""), r);
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            throw new IOException(file + " is no routing instance: " + e.getMessage(), e);
        }
    }

    private static RoutingFile of(String name, Reading r) {
        if (!r.head.containsKey("DIMENSION") || !r.head.containsKey("EDGE_WEIGHT_TYPE")) {
            throw new IllegalArgumentException("DIMENSION or EDGE_WEIGHT_TYPE is missing");
        }
        int n = Integer.parseInt(r.head.get("DIMENSION"));
        String type = r.head.get("EDGE_WEIGHT_TYPE");
        double[] x = new double[n];
        double[] y = new double[n];
        double[][] matrix = null;
        if (type.equals("EXPLICIT")) {
            matrix = matrix(r.head.get("EDGE_WEIGHT_FORMAT"), r.section("EDGE_WEIGHT_SECTION"), n);
        } else {
            List<Double> c = r.section("NODE_COORD_SECTION");
            if (c.size() != 3 * n) {
                throw new IllegalArgumentException(c.size() / 3 + " nodes have coordinates, DIMENSION says " + n);
            }
            for (int i = 0; i < n; i++) {
                x[i] = c.get(3 * i + 1);
                y[i] = c.get(3 * i + 2);
            }
        }
        int[] partner = partners(r.section("FIXED_EDGES_SECTION"), n);
        return new RoutingFile(name, x, y, Weights.free(Weights.of(type, x, y, matrix), partner), partner);
    }

    private static double[][] matrix(String format, List<Double> given, int n) {
        double[][] d = new double[n][n];
        int at = 0;
        for (int i = 0; i < n; i++) {
            int[] columns = switch (String.valueOf(format)) {
                case "FULL_MATRIX" -> new int[] {0, n};
                case "UPPER_ROW" -> new int[] {i + 1, n};
                case "UPPER_DIAG_ROW" -> new int[] {i, n};
                case "LOWER_ROW" -> new int[] {0, i};
                case "LOWER_DIAG_ROW" -> new int[] {0, i + 1};
                default -> throw new IllegalArgumentException("matrices of form " + format + " are not read");
            };
            for (int j = columns[0]; j < columns[1]; j++) {
                d[i][j] = given.get(at++);
                d[j][i] = d[i][j];
            }
        }
        return d;
    }

    private static int[] partners(List<Double> edges, int n) {
        int[] partner = new int[n];
        java.util.Arrays.fill(partner, -1);
        for (int i = 0; i + 1 < edges.size() && edges.get(i) > 0; i += 2) {
            int a = edges.get(i).intValue() - 1;
            int b = edges.get(i + 1).intValue() - 1;
            partner[a] = b;
            partner[b] = a;
        }
        return partner;
    }

    int size() {
        return x.length;
    }

    double length(int[] tour) {
        double sum = 0;
        for (int i = 0; i < tour.length; i++) {
            sum += costs.cost(tour[i], tour[(i + 1) % tour.length]);
        }
        return sum;
    }
}
