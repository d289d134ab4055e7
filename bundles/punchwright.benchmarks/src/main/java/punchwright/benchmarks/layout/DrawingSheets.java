// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.PartCounting;
import punchwright.engine.drawing.PartGroup;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nester;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.check.LayoutCheck;

/**
 * Parts of real drawings on sheets of 2000 x 1000 mm, by their boxes and by their true outlines: sheets, utilisation, bound,
 * processor time of one core, and the verdict of the independent check.
 *
 * <p>Every part of every drawing below a folder counts once, in the order of the files; of those that fit a sheet and are wider
 * than 10 mm the given number is taken evenly over all. Shapes that are no valid polygon (contours that cross) are left out.
 */
public final class DrawingSheets {

    private static final double LENGTH_MM = 2000;
    private static final double WIDTH_MM = 1000;
    private static final double EDGE_MM = 10;
    private static final double WEB_MM = 5;
    private static final double LEAST_MM = 10;
    /** Trials: about 5 s of one core. */
    private static final long WORK = 60_000_000;

    private final PrintStream out;
    private int files;
    private int unread;
    private int invalid;

    private DrawingSheets(PrintStream out) {
        this.out = out;
    }

    /** Runs; returns the exit code: 0, 1 when a layout is not valid, 2 for wrong arguments or files. */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        try {
            Path folder = Path.of(value(arguments, "--drawings", ""));
            int count = Integer.parseInt(value(arguments, "--parts", "100"));
            int quantity = Integer.parseInt(value(arguments, "--quantity", "1"));
            if (count < 1 || quantity < 1) {
                throw new IllegalArgumentException("--parts is " + count + ", --quantity is " + quantity + "; give 1 or more");
            }
            return new DrawingSheets(out).run(folder, count, quantity);
        } catch (IllegalArgumentException | IOException e) {
            err.println(e.getMessage());
            err.println("bench layout --drawings FOLDER [--parts 100] [--quantity 1]");
            return 2;
        }
    }

    private static String value(List<String> arguments, String name, String otherwise) {
        int at = arguments.indexOf(name);
        return at >= 0 && at + 1 < arguments.size() ? arguments.get(at + 1) : otherwise;
    }

    private int run(Path folder, int count, int quantity) throws IOException {
        long start = LayoutBench.processorNanos();
        List<Shape> all = shapes(folder);
        double reading = (LayoutBench.processorNanos() - start) / 1e9;
        out.printf(Locale.ROOT, "%d drawings, %d without a part, %d shapes left out as no valid polygon, %d parts, "
                + "read in %.1f s%n", files, unread, invalid, all.size(), reading);
        if (all.isEmpty()) {
            throw new IllegalArgumentException(folder + " holds no part that fits a sheet of " + LENGTH_MM + " x " + WIDTH_MM);
        }
        List<NestPart> parts = new ArrayList<>();
        int taken = Math.min(count, all.size());
        for (int i = 0; i < taken; i++) {
            parts.add(new NestPart("P" + i, all.get((int) ((long) i * all.size() / taken)), quantity,
                    List.of(0.0, 90.0, 180.0, 270.0), WEB_MM));
        }
        out.printf(Locale.ROOT, "%-8s %6s %7s %12s %10s %8s %6s%n", "by", "pieces", "sheets", "utilisation", "bound", "seconds",
                "valid");
        return line("boxes", parts, false) & line("outlines", parts, true) ? 0 : 1;
    }

    private boolean line(String by, List<NestPart> parts, boolean trueShapes) {
        SheetOffer sheet = new SheetOffer("2000 x 1000", LENGTH_MM, WIDTH_MM, 1, 10_000, false);
        NestingJob job = new NestingJob(parts, List.of(sheet), EDGE_MM, EDGE_MM, LENGTH_MM, WIDTH_MM, 1e6, 1.5 * 7.85e-6, WORK, 1,
                trueShapes);
        long start = LayoutBench.processorNanos();
        Nesting nesting = Nester.nest(job);
        double seconds = (LayoutBench.processorNanos() - start) / 1e9;
        boolean valid = LayoutCheck.of(job, nesting).isEmpty();
        int sheets = nesting.layouts().stream().mapToInt(Layout::runs).sum();
        int pieces = nesting.layouts().stream().mapToInt(l -> l.runs() * l.placements().size()).sum();
        out.printf(Locale.ROOT, "%-8s %6d %7d %11.1f%% %10.0f %8.1f %6s%n", by, pieces, sheets, 100 * nesting.utilisation(),
                nesting.boundMm2() / sheet.areaMm2(), seconds, valid ? "yes" : "NO");
        JsonObject json = new JsonObject();
        json.addProperty("name", parts.size() + " parts by " + by);
        json.addProperty("ours", sheets);
        json.addProperty("bound", Math.round(nesting.boundMm2() / sheet.areaMm2()));
        json.addProperty("seconds", Math.round(seconds * 100) / 100.0);
        json.addProperty("valid", valid);
        out.println(json);
        return valid;
    }

    private List<Shape> shapes(Path folder) throws IOException {
        List<Path> drawings;
        try (Stream<Path> walk = Files.walk(folder)) {
            drawings = walk.filter(f -> f.toString().toLowerCase(Locale.ROOT).endsWith(".dxf")).sorted().toList();
        }
        List<Shape> shapes = new ArrayList<>();
        for (Path drawing : drawings) {
            files++;
            try {
                PartCounting.groups(DrawingReader.read(drawing, DrawingOptions.USUAL).shapes()).stream().map(PartGroup::shape)
                        .filter(DrawingSheets::fits).forEach(s -> addValid(s, shapes));
            } catch (DrawingException noPart) {
                unread++;
            }
        }
        return shapes;
    }

    private static boolean fits(Shape shape) {
        Bounds b = shape.bounds();
        double longer = Math.max(b.width(), b.height());
        double shorter = Math.min(b.width(), b.height());
        return shorter >= LEAST_MM && longer <= LENGTH_MM - 2 * EDGE_MM && shorter <= WIDTH_MM - 2 * EDGE_MM;
    }

    private void addValid(Shape shape, List<Shape> shapes) {
        GeometryFactory factory = new GeometryFactory();
        if (factory.createPolygon(ring(shape.outer(), factory), shape.holes().stream().map(h -> ring(h, factory))
                .toArray(LinearRing[]::new)).isValid()) {
            shapes.add(shape);
        } else {
            invalid++;
        }
    }

    private static LinearRing ring(Contour contour, GeometryFactory factory) {
        List<Coordinate> points = new ArrayList<>();
        for (Point p : Flattening.points(contour, 1e-3)) {
            points.add(new Coordinate(p.x(), p.y()));
        }
        points.add(points.get(0).copy());
        return factory.createLinearRing(points.toArray(Coordinate[]::new));
    }
}
