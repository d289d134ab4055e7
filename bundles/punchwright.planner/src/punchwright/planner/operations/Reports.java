// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

import punchwright.engine.geometry.Shape;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.Part;

/** How plans become spreadsheets; given by the workbench and the headless application, which know the writers. */
public interface Reports {

    /**
     * Writes the process sheet of a plan; returns the file.
     *
     * @param shapes flat shape of each part, for the pictures; null for a part that has none
     */
    Path processSheet(Plan plan, Library library, Function<Part, Shape> shapes, Path folder) throws IOException;

    /** Writes the cost roll-up of an order from its plans, one a machine; returns the file. */
    Path costRollup(Order order, List<Plan> plans, Library library, Path folder) throws IOException;
}
