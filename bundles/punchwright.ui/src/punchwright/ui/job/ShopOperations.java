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

    private static final int TICKS = 1000;

    private ShopOperations() {
    }

    /** The version that a plan states. */
    static String version() {
        return Platform.getBundle("punchwright.ui").getVersion().toString().replaceFirst("\\.qualifier$", "");
    }

    /** Runs an operation with progress and cancel. */
    static Outcome run(String name, Path workspace, List<String> words, Map<String, String> options, IProgressMonitor monitor)
            throws IOException {
        Operations registry = new Operations(new Workbooks(), version());
        try {
            return registry.named(name).orElseThrow(() -> new IllegalStateException("No operation " + name))
                    .run(new Call(workspace, words, options, new Steps(monitor)));
        } catch (CancelledException e) {
            throw new OperationCanceledException();
        }
    }

    /** Progress of the engine on a monitor. */
    private static final class Steps implements Progress {
        private final IProgressMonitor monitor;
        private int done;

        Steps(IProgressMonitor monitor) {
            this.monitor = monitor;
        }

        @Override
        public void at(String step, double share) {
            monitor.subTask(step);
            int now = (int) Math.round(share * TICKS);
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
