// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The headless application as the platform starts it; hands the arguments to {@link Batch} and its exit code back. */
public final class BatchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        String[] arguments = (String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        context.applicationRunning();
        return new Batch(System.out, System.err).run(arguments);
    }

    @Override
    public void stop() {
        // Each operation ends by itself; there is nothing to wait for.
    }
}
