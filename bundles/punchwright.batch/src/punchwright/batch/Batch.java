// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;

import punchwright.engine.EngineVersion;
import punchwright.planner.operations.Call;
import punchwright.planner.operations.ExitCode;
import punchwright.planner.operations.Operations;
import punchwright.planner.operations.Outcome;
import punchwright.planner.operations.ShopOperation;
import punchwright.planner.operations.UsageException;

/** The command line: reads the arguments, runs what they ask for and returns the exit code. */
public final class Batch {

    private static final Gson JSON = new GsonBuilder().disableHtmlEscaping().create();
    private static final Set<String> COMMON = Set.of("help", "version", "quiet");

    private final PrintStream out;
    private final PrintStream err;
    private final Operations operations;

    /**
     * @param out        where results go
     * @param err        where progress and errors go, one line each
     * @param operations the registry
     */
    public Batch(PrintStream out, PrintStream err, Operations operations) {
        this.out = out;
        this.err = err;
        this.operations = operations;
    }

    /**
     * Runs one command line.
     *
     * @param arguments the words after {@code batch}
     * @return the exit code, see {@link ExitCode}
     */
    public int run(String... arguments) {
        try {
            return run(CommandLine.parse(arguments)).number();
        } catch (UsageException | InvalidPathException e) {
            return fail(e.getMessage() + "; --help lists what can be asked for", ExitCode.USAGE);
        } catch (IOException e) {
            return fail(e.getMessage(), ExitCode.INPUT);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            e.printStackTrace(err);
            return fail("a fault of the program: " + e + ". Please report it with the lines above; no file was changed by it.",
                    ExitCode.INTERNAL);
        }
    }

    private int fail(String message, ExitCode code) {
        err.println("error: " + message);
        return code.number();
    }

    private ExitCode run(CommandLine line) throws IOException {
        if (line.options().containsKey("version")) {
            out.println("Punchwright " + EngineVersion.TEXT);
            return ExitCode.GOOD;
        }
        if (line.operation().isEmpty()) {
            if (line.options().containsKey("help")) {
                out.print(Help.all(operations));
                return ExitCode.GOOD;
            }
            throw new UsageException("nothing to do");
        }
        ShopOperation operation = operations.named(line.operation())
                .orElseThrow(() -> new UsageException("unknown operation '" + line.operation() + "'"));
        if (line.options().containsKey("help")) {
            out.print(Help.of(operation, line.words()));
            return ExitCode.GOOD;
        }
        refuseUnknown(line, operation);
        return print(operation.run(new Call(line.workspace(), line.words(), line.options(), progress(line))),
                line.options().containsKey("json"));
    }

    private static void refuseUnknown(CommandLine line, ShopOperation operation) {
        Set<String> unknown = new TreeSet<>(line.options().keySet());
        unknown.removeAll(COMMON);
        unknown.removeAll(operation.options());
        if (!unknown.isEmpty()) {
            throw new UsageException(operation.name() + " has no option --" + String.join(", --", unknown));
        }
    }

    private StepPrinter progress(CommandLine line) {
        return new StepPrinter(line.options().containsKey("quiet") ? null : err);
    }

    private ExitCode print(Outcome outcome, boolean json) {
        Stream<String> lines = json ? outcome.records().stream().map(JSON::toJson) : outcome.lines().stream();
        lines.forEach(out::println);
        FindingLines.summary(outcome.findings()).forEach(err::println);
        out.flush();
        return outcome.code();
    }
}
