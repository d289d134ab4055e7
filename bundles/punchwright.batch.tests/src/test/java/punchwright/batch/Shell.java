// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

import punchwright.engine.geometry.Shape;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.planner.operations.Operations;
import punchwright.planner.operations.Reports;

/** Runs command lines and keeps what they print; spreadsheets are stood for by text files. */
final class Shell {

    static final Operations OPERATIONS = new Operations(new Reports() {
        @Override
        public Path processSheet(Plan plan, Library library, Function<Part, Shape> shapes, Path folder) throws IOException {
            return write(folder, "sheet-" + plan.getMachine().getId() + ".txt");
        }

        @Override
        public Path costRollup(Order order, List<Plan> plans, Library library, Path folder) throws IOException {
            return write(folder, "cost-" + order.getNumber() + ".txt");
        }

        private static Path write(Path folder, String name) throws IOException {
            Files.createDirectories(folder);
            return Files.writeString(folder.resolve(name), name);
        }
    }, "test");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    /** Exit code of one command line; forgets what earlier ones printed. */
    int run(String... arguments) {
        out.reset();
        err.reset();
        return new Batch(stream(out), stream(err), OPERATIONS).run(arguments);
    }

    String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
