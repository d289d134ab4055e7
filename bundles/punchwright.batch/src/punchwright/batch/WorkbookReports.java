// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.planner.operations.Reports;
import punchwright.sheets.CostRollupWriter;
import punchwright.sheets.PartOutline;
import punchwright.sheets.ProcessSheetWriter;

/** Plans as workbooks, named by order and machine. */
final class WorkbookReports implements Reports {

    /** Fine enough for print: no chord leaves its arc by more than this, mm. */
    private static final double CHORD_MM = 0.02;

    private final Locale locale;

    WorkbookReports(Locale locale) {
        this.locale = locale;
    }

    @Override
    public Path processSheet(Plan plan, Library library, Function<Part, Shape> shapes, Path folder) throws IOException {
        Path file = folder.resolve(ProcessSheetWriter.fileName(plan));
        ProcessSheetWriter.write(plan, library, part -> outline(shapes.apply(part)), locale, file);
        return file;
    }

    @Override
    public Path costRollup(Order order, List<Plan> plans, Library library, Path folder) throws IOException {
        Path file = folder.resolve(CostRollupWriter.fileName(order));
        CostRollupWriter.write(order, plans, library, locale, file);
        return file;
    }

    private static PartOutline outline(Shape shape) {
        if (shape == null) {
            return null;
        }
        List<double[]> edges = new ArrayList<>();
        edges.add(points(shape.outer()));
        shape.holes().forEach(h -> edges.add(points(h)));
        return new PartOutline(edges);
    }

    private static double[] points(Contour contour) {
        List<Point> points = Flattening.points(contour, CHORD_MM);
        double[] xy = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            xy[2 * i] = points.get(i).x();
            xy[2 * i + 1] = points.get(i).y();
        }
        return xy;
    }
}
