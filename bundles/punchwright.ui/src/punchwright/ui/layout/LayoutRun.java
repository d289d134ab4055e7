// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;

import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.Watch;
import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.files.WorkspacePaths;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.OrderLayouts;
import punchwright.ui.job.Background;
import punchwright.ui.job.MonitorProgress;
import punchwright.ui.text.Texts;

/**
 * Layouts made beside the window, one run at a time. {@link #stop()} takes the best so far; a cancel of the job in the progress
 * view drops it.
 */
final class LayoutRun {

    private final Consumer<String> news;
    private final Runnable dropped;
    private AtomicBoolean enough = new AtomicBoolean();
    private int turn;
    private int delivered;

    /**
     * Runs for one page.
     *
     * @param news    told the best so far in a few words, on the UI thread
     * @param dropped called on the UI thread when the last run ended without a result
     */
    LayoutRun(Consumer<String> news, Runnable dropped) {
        this.news = news;
        this.dropped = dropped;
    }

    /** Lays out an order that was copied; {@code then} gets the result on the UI thread unless another run came between. */
    void orders(String title, OrderCopy copy, WorkspacePaths paths, OrderLayouts.Options options,
            Consumer<OrderLayouts.Result> then) {
        AtomicBoolean stopped = begin();
        int mine = turn;
        Display display = Display.getCurrent();
        follow(mine, Background.start(title, monitor -> {
            try {
                return new OrderLayouts(copy.library(), paths).of(copy.order(), copy.machine(), options,
                        progress(monitor, stopped, display, mine));
            } catch (CancelledException e) {
                throw new OperationCanceledException();
            }
        }, result -> ifLast(mine, result, then)));
    }

    /** Changes one sheet; the rest as above. */
    void sheet(String title, ArrangedSheet sheet, Function<Watch, Function<ArrangedSheet, ArrangedSheet>> work,
            Consumer<ArrangedSheet> then) {
        AtomicBoolean stopped = begin();
        int mine = turn;
        follow(mine, Background.start(title, monitor -> work.apply(new Watch() {
            @Override
            public void best(Nesting best, double share) {
                monitor.worked(1);
            }

            @Override
            public boolean cancelled() {
                return stopped.get() || monitor.isCanceled();
            }
        }).apply(sheet), result -> ifLast(mine, result, then)));
    }

    /** What ends without a result is told when the window has taken what came before. */
    private void follow(int mine, Job job) {
        Display display = Display.getCurrent();
        job.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                if (!display.isDisposed()) {
                    display.asyncExec(() -> {
                        if (mine == turn && delivered != mine) {
                            dropped.run();
                        }
                    });
                }
            }
        });
    }

    private AtomicBoolean begin() {
        enough.set(true);
        enough = new AtomicBoolean();
        turn++;
        return enough;
    }

    private <T> void ifLast(int mine, T result, Consumer<T> then) {
        if (mine == turn) {
            delivered = mine;
            then.accept(result);
        }
    }

    /** It is enough: the best so far is the result. */
    void stop() {
        enough.set(true);
    }

    /** Drops what is running. */
    void drop() {
        stop();
        turn++;
    }

    private Progress progress(IProgressMonitor monitor, AtomicBoolean stopped, Display display, int mine) {
        MonitorProgress plain = new MonitorProgress(monitor, Background.TICKS);
        return new Progress() {
            @Override
            public void at(String step, double share) {
                plain.at(step, share);
            }

            @Override
            public void best(String words, double share) {
                if (display != null && !display.isDisposed()) {
                    display.asyncExec(() -> {
                        if (mine == turn && delivered != mine) {
                            news.accept(Texts.of("layouts.best", words));
                        }
                    });
                }
            }

            @Override
            public boolean cancelled() {
                return stopped.get() || plain.cancelled();
            }

            @Override
            public void check() {
                plain.check();
            }
        };
    }
}
