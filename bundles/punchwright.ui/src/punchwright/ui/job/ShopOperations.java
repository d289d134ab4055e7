// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Platform;

import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.planner.operations.Call;
import punchwright.planner.operations.Operations;
import punchwright.planner.operations.Outcome;

/** The registry of operations, as the workbench calls it: the same one that the command line has. */
final class ShopOperations {

    private ShopOperations() {
    }

    /** The version that a plan states. */
    static String version() {
        return Platform.getBundle("punchwright.ui").getVersion().toString().replaceFirst("\\.qualifier$", "");
    }

    /**
     * Runs an operation with progress and cancel.
     *
     * @param ticks how many of the monitor's ticks it may use up
     */
    static Outcome run(String name, Path workspace, List<String> words, Map<String, String> options, IProgressMonitor monitor, int ticks)
            throws IOException {
        Operations registry = new Operations(new Workbooks(), version());
        try {
            return registry.named(name).orElseThrow(() -> new IllegalStateException("No operation " + name))
                    .run(new Call(workspace, words, options, new Steps(monitor, ticks)));
        } catch (CancelledException e) {
            throw new OperationCanceledException();
        }
    }

    /** Progress of the engine on a monitor. */
    private static final class Steps implements Progress {
        private final IProgressMonitor monitor;
        private final int ticks;
        private int done;

        Steps(IProgressMonitor monitor, int ticks) {
            this.monitor = monitor;
            this.ticks = ticks;
        }

        @Override
        public void at(String step, double share) {
            monitor.subTask(step);
            int now = (int) Math.round(Math.min(1, share) * ticks);
            if (now > done) {
                monitor.worked(now - done);
                done = now;
            }
        }

        @Override
        public boolean cancelled() {
            return monitor.isCanceled();
        }
    }
}
