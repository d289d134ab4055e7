// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import punchwright.engine.geometry.Shape;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.planner.operations.Reports;
import punchwright.sheets.CostRollupWriter;
import punchwright.sheets.PartOutline;
import punchwright.sheets.ProcessSheetWriter;
import punchwright.ui.part.PartShapes;
import punchwright.ui.sheet.Outline;

/** Plans as workbooks in the language of the user, under the names that the command line gives them too. */
final class Workbooks implements Reports {

    private final Locale locale = Locale.getDefault();

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
        return shape == null ? null : new PartOutline(PartShapes.outlines(shape).stream().map(Outline::xy).toList());
    }
}
