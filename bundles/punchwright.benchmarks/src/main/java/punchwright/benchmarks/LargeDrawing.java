// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Writes a DXF text of a given size: many small plates, each of four lines with a round hole and an obround. */
final class LargeDrawing {

    private static final String HEAD =
            "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n";
    private static final int IN_A_ROW = 400;
    private static final double STEP = 25;
    /** Handles must be above 0 and unique; low ones are for tables. */
    private static final int FIRST_HANDLE = 0x1000;

    private LargeDrawing() {
    }

    /** Number of plates written. */
    static int write(Path file, long bytes) throws IOException {
        int plates = 0;
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            out.write(HEAD);
            for (long size = HEAD.length(); size < bytes; plates++) {
                String plate = plate(plates, plates % IN_A_ROW * STEP, plates / IN_A_ROW * STEP);
                out.write(plate);
                size += plate.length();
            }
            out.write("0\nENDSEC\n0\nEOF\n");
        }
        return plates;
    }

    private static String plate(int number, double x, double y) {
        double[][] corners = {{x, y}, {x + 20, y}, {x + 20, y + 12.5}, {x, y + 12.5}};
        StringBuilder out = new StringBuilder();
        for (int k = 0; k < 4; k++) {
            double[] a = corners[k];
            double[] b = corners[(k + 1) % 4];
            out.append(entity("LINE", "Line", FIRST_HANDLE + number * 8 + k, "OUTLINE")).append(point(10, a[0], a[1]))
                    .append(" 30\n0.0\n")
                    .append(point(11, b[0], b[1])).append(" 31\n0.0\n");
        }
        out.append(entity("CIRCLE", "Circle", FIRST_HANDLE + number * 8 + 5, "HOLES")).append(point(10, x + 5.123456, y + 6.25))
                .append(" 30\n0.0\n 40\n2.75\n");
        out.append(entity("LWPOLYLINE", "Polyline", FIRST_HANDLE + number * 8 + 6, "HOLES")).append(" 90\n4\n 70\n1\n")
                .append(point(10, x + 11, y + 4))
                .append(point(10, x + 16, y + 4)).append(" 42\n1.0\n").append(point(10, x + 16, y + 8))
                .append(point(10, x + 11, y + 8))
                .append(" 42\n1.0\n");
        return out.toString();
    }

    private static String entity(String type, String kind, int handle, String layer) {
        return "  0\n" + type + "\n  5\n" + Integer.toHexString(handle).toUpperCase(Locale.ROOT)
                + "\n100\nAcDbEntity\n  8\n" + layer
                + "\n100\nAcDb" + kind + "\n";
    }

    private static String point(int code, double x, double y) {
        return String.format(Locale.ROOT, " %d\n%.6f\n %d\n%.6f\n", code, x, code + 10, y);
    }
}
