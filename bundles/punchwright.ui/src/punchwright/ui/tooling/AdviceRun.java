// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;

import punchwright.engine.advice.Advice;
import punchwright.engine.advice.AdviceOptions;
import punchwright.engine.advice.Advisor;
import punchwright.engine.finding.Finding;
import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.files.Workspace;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Machine;
import punchwright.planner.plans.OrderBook;
import punchwright.ui.job.Background;
import punchwright.ui.job.MonitorProgress;
import punchwright.ui.text.Texts;

/** Works the advice out beside the window, on a reading-only look at what is saved; a run that was stopped leaves nothing. */
final class AdviceRun {

    /** Steps are told no more often than this. */
    private static final long STEP_NS = 200_000_000L;

    private int turn;
    private Background<Result> running;

    /**
     * What came out.
     *
     * @param advice the advice
     * @param input  what was noticed while the orders were read
     */
    record Result(Advice advice, List<Finding> input) {
    }

    /**
     * Starts.
     *
     * @param folder       the workspace
     * @param timesPerYear how often a year each order is made; 0 by the dates of the orders
     * @param step         told the share done, 0 to 1, on the UI thread, now and then
     * @param then         gets the advice on the UI thread, unless it was stopped
     * @param ended        told when the run is over in any way, on the UI thread, unless another one was started
     */
    void start(Path folder, double timesPerYear, Consumer<Double> step, Consumer<Result> then, Runnable ended) {
        stop();
        int mine = turn;
        Display display = Display.getCurrent();
        running = Background.start(Texts.of("job.advise"),
                monitor -> advise(folder, timesPerYear, new Told(monitor, display, share -> {
            if (mine == turn) {
                step.accept(share);
            }
        })), advice -> {
            if (mine == turn) {
                then.accept(advice);
            }
        });
        running.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!display.isDisposed()) {
                    display.asyncExec(() -> {
                        if (mine == turn) {
                            ended.run();
                        }
                    });
                }
            }
        });
    }

    /** Cancels what is running; says whether something was. */
    boolean stop() {
        turn++;
        boolean was = running != null && running.getState() != Job.NONE;
        if (running != null) {
            running.cancel();
            running = null;
        }
        return was;
    }

    private static Result advise(Path folder, double timesPerYear, Progress progress) throws IOException {
        try (Workspace workspace = Workspace.open(folder, Workspace.Access.READ)) {
            List<Machine> machines = workspace.library().getMachines().stream()
                    .filter(m -> m.getStatus() == ItemStatus.IN_USE).toList();
            OrderBook.Reading reading = new OrderBook(workspace.library(), workspace.paths())
                    .read(workspace.orders(), machines, timesPerYear, AdviceOptions.USUAL);
            return new Result(Advisor.advise(reading.job(), progress), reading.findings());
        } catch (CancelledException e) {
            throw new OperationCanceledException();
        }
    }

    /** Progress on a monitor, and now and then in the view. */
    private static final class Told implements Progress {
        private final MonitorProgress monitor;
        private final Display display;
        private final Consumer<Double> step;
        private long told;

        Told(IProgressMonitor monitor, Display display, Consumer<Double> step) {
            this.monitor = new MonitorProgress(monitor, Background.TICKS);
            this.display = display;
            this.step = step;
        }

        @Override
        public void at(String what, double share) {
            monitor.at(what, share);
            if (System.nanoTime() - told > STEP_NS && !display.isDisposed()) {
                told = System.nanoTime();
                display.asyncExec(() -> step.accept(share));
            }
        }

        @Override
        public boolean cancelled() {
            return monitor.cancelled();
        }
    }
}
