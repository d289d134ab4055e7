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
    static Outcome run(String name, Path workspace, List<String> words, Map<String, String> options,
            IProgressMonitor monitor, int ticks)
            throws IOException {
        Operations registry = new Operations(new Workbooks(), version());
        try {
            return registry.named(name).orElseThrow(() -> new IllegalStateException("No operation " + name))
                    .run(new Call(workspace, words, options, new MonitorProgress(monitor, ticks)));
        } catch (CancelledException e) {
            throw new OperationCanceledException();
        }
    }
}
