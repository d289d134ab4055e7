// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;

import punchwright.engine.drawing.DrawingOptions;
import punchwright.planner.intake.DrawingFiles;
import punchwright.planner.intake.DrawingReading;
import punchwright.ui.text.Texts;

/**
 * Reads drawings one after the other in a job. Results come to the window in bundles, a few times a second, however many
 * there are; what is to be looked at now goes first.
 */
public final class IntakeReader {

    private static final int BUNDLE_MS = 120;

    private final Intake intake;
    private final Display display = Display.getDefault();
    private final Deque<Wanted> queue = new ArrayDeque<>();
    private final ConcurrentLinkedQueue<Done> done = new ConcurrentLinkedQueue<>();
    private final ConcurrentLinkedQueue<Runnable> finders = new ConcurrentLinkedQueue<>();
    private Job job;
    private boolean running;
    private int looking;
    private int total;
    private int finished;
    private boolean delivering;
    private volatile boolean stopped;

    /** A drawing to be read, with the options of that moment. */
    private record Wanted(IntakeDrawing drawing, DrawingOptions options) {
    }

    /** A drawing that was read. */
    private record Done(Wanted wanted, DrawingReading reading) {
    }

    IntakeReader(Intake intake) {
        this.intake = intake;
    }

    /** Looks for drawings, then has them read. */
    void find(List<Path> filesAndFolders) {
        stopped = false;
        looking++;
        finders.add(() -> {
            List<Path> files = DrawingFiles.below(filesAndFolders, () -> stopped);
            onUi(() -> {
                looking--;
                intake.found(files);
            });
        });
        work();
    }

    /** Reads drawings; one that waits already is read once, in the newest way. */
    void read(List<IntakeDrawing> drawings) {
        List<Wanted> fresh = new ArrayList<>();
        drawings.forEach(d -> fresh.add(new Wanted(d, intake.options(d))));
        synchronized (queue) {
            int before = queue.size();
            queue.removeIf(w -> drawings.contains(w.drawing()));
            total += fresh.size() - (before - queue.size());
            queue.addAll(fresh);
        }
        if (!fresh.isEmpty()) {
            stopped = false;
            work();
        }
    }

    /** Reads this drawing before the others that wait, also when its reading was dropped from memory. */
    void first(IntakeDrawing drawing) {
        Wanted wanted = new Wanted(drawing, intake.options(drawing));
        synchronized (queue) {
            if (!queue.removeIf(w -> w.drawing() == drawing)) {
                total++;
            }
            queue.addFirst(wanted);
        }
        stopped = false;
        work();
    }

    private void work() {
        if (running) {
            return;
        }
        running = true;
        job = Job.create(Texts.of("job.intake"), this::run);
        job.setPriority(Job.LONG);
        job.addJobChangeListener(new JobChangeAdapter() {
            @Override
            public void done(IJobChangeEvent event) {
                boolean gaveUp = event.getResult().getSeverity() == IStatus.CANCEL;
                onUi(() -> ended(gaveUp));
            }
        });
        job.schedule();
    }

    private IStatus run(IProgressMonitor monitor) {
        monitor.beginTask(Texts.of("job.intake"), IProgressMonitor.UNKNOWN);
        while (!stopped && !monitor.isCanceled()) {
            Runnable finder = finders.poll();
            if (finder != null) {
                finder.run();
                continue;
            }
            Wanted next;
            synchronized (queue) {
                next = queue.poll();
            }
            if (next == null) {
                break;
            }
            monitor.subTask(next.drawing().name());
            done.add(new Done(next, DrawingReading.of(next.drawing().file(), next.options())));
            deliverSoon();
        }
        return stopped || monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
    }

    private void ended(boolean gaveUp) {
        running = false;
        if (gaveUp) {
            looking = 0;
            synchronized (queue) {
                total -= queue.size();
                queue.clear();
            }
            finders.clear();
        }
        deliver();
        if (!gaveUp && hasWork()) {
            work();
        }
    }

    private boolean hasWork() {
        synchronized (queue) {
            return !queue.isEmpty() || !finders.isEmpty();
        }
    }

    private synchronized void deliverSoon() {
        if (!delivering) {
            delivering = true;
            onUi(() -> display.timerExec(BUNDLE_MS, this::deliver));
        }
    }

    private void deliver() {
        synchronized (this) {
            delivering = false;
        }
        boolean any = false;
        for (Done next = done.poll(); next != null; next = done.poll()) {
            finished++;
            any = true;
            if (intake.holds(next.wanted().drawing()) && !waits(next.wanted().drawing())) {
                next.wanted().drawing().take(next.reading(), intake.materials());
            }
        }
        if (finished >= total && !hasWork()) {
            finished = 0;
            total = 0;
        }
        if (any || total == 0) {
            intake.changed();
        }
    }

    /** Whether the drawing is to be read again in another way, so that this reading no longer counts. */
    private boolean waits(IntakeDrawing drawing) {
        synchronized (queue) {
            return queue.stream().anyMatch(w -> w.drawing() == drawing);
        }
    }

    private void onUi(Runnable what) {
        if (!display.isDisposed()) {
            display.asyncExec(what);
        }
    }

    /** Whether it is at work. */
    public boolean isBusy() {
        return total > 0 || looking > 0 || running || !done.isEmpty();
    }

    /** Drawings of the present round that are read. */
    public int finished() {
        return finished;
    }

    /** Drawings of the present round. */
    public int total() {
        return total;
    }

    /** Stops after the drawing in hand; those that wait stay unread. */
    void stop() {
        stopped = true;
        if (job != null) {
            job.cancel();
        }
    }
}
