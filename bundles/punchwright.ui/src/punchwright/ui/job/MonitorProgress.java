// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import org.eclipse.core.runtime.IProgressMonitor;

import punchwright.engine.planning.Progress;

/** Progress of the engine on a monitor. */
public final class MonitorProgress implements Progress {

    private final IProgressMonitor monitor;
    private final int ticks;
    private int done;

    /** Uses up to {@code ticks} of the monitor's ticks. */
    public MonitorProgress(IProgressMonitor monitor, int ticks) {
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
