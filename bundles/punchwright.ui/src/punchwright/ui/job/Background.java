// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/**
 * Long work beside the window: a job with progress and cancel whose result is handed over on the UI thread. An error becomes one
 * message; a cancelled job changes nothing.
 *
 * @param <T> the result
 */
public final class Background<T> extends Job {

    /** Everything that one workspace does in the background shares this family, so that a test can wait for it. */
    public static final Object FAMILY = new Object();
    /** Ticks of a whole job. */
    public static final int TICKS = 1000;

    /**
     * What is done.
     *
     * @param <T> the result
     */
    public interface Work<T> {
        /** Does it; asks the monitor whether to go on. */
        T run(IProgressMonitor monitor) throws Exception;
    }

    private final Work<T> work;
    private final Consumer<T> then;

    private Background(String title, Work<T> work, Consumer<T> then) {
        super(title);
        this.work = work;
        this.then = then;
        setUser(false);
        setPriority(Job.LONG);
    }

    /** Starts work; {@code then} gets its result on the UI thread. */
    public static <T> Background<T> start(String title, Work<T> work, Consumer<T> then) {
        Background<T> job = new Background<>(title, work, then);
        job.schedule();
        return job;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        monitor.beginTask(getName(), TICKS);
        try {
            T result = work.run(monitor);
            if (monitor.isCanceled()) {
                return Status.CANCEL_STATUS;
            }
            onUi(() -> then.accept(result));
            return Status.OK_STATUS;
        } catch (OperationCanceledException e) {
            return Status.CANCEL_STATUS;
        } catch (Exception e) {
            onUi(() -> Messages.show(shell(), e));
            return Status.OK_STATUS;
        } finally {
            monitor.done();
        }
    }

    private static void onUi(Runnable what) {
        Display display = PlatformUI.isWorkbenchRunning() ? PlatformUI.getWorkbench().getDisplay() : null;
        if (display != null && !display.isDisposed()) {
            display.asyncExec(what);
        }
    }

    private static Shell shell() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow() == null ? null
                : PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
    }

    @Override
    public boolean belongsTo(Object family) {
        return family == FAMILY;
    }
}
