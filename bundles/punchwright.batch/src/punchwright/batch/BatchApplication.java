// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.FileOutputStream;
import java.io.FileDescriptor;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

import punchwright.engine.EngineVersion;
import punchwright.planner.operations.Operations;

/** The headless application as the platform starts it; hands the arguments to {@link Batch} and its exit code back. */
public final class BatchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        context.applicationRunning();
        Operations operations = new Operations(new WorkbookReports(Locale.ENGLISH), EngineVersion.TEXT);
        return new Batch(utf8(FileDescriptor.out), utf8(FileDescriptor.err), operations).run(arguments);
    }

    private static PrintStream utf8(FileDescriptor stream) {
        return new PrintStream(new FileOutputStream(stream), true, StandardCharsets.UTF_8);
    }

    @Override
    public void stop() {
        // Each operation ends by itself; there is nothing to wait for.
    }
}
