// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

import punchwright.ui.job.Background;
import punchwright.ui.job.OpenWorkspace;
import punchwright.ui.session.Session;

/** What the tests of the workbench share: waiting without blocking the window, finding widgets, pictures of the window. */
final class Ui {

    private static final int WAIT_SECONDS = 90;
    /** A window that never rests, with a bar of progress in it, is settled after this time. */
    private static final int SETTLED_MS = 300;
    /** Longer than the delays after which a page is worked out or a picture is drawn fine (at most 120 ms). */
    private static final int REST_MS = 140;

    private Ui() {
    }

    static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow() == null ? PlatformUI.getWorkbench().getWorkbenchWindows()[0]
                : PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    }

    static IWorkbenchPage page() {
        return window().getActivePage();
    }

    /** Lets the window work until a condition holds. */
    static void until(String what, BooleanSupplier condition) {
        Display display = Display.getCurrent();
        long end = System.nanoTime() + WAIT_SECONDS * 1_000_000_000L;
        while (!condition.getAsBoolean() && System.nanoTime() < end) {
            if (!display.readAndDispatch()) {
                display.timerExec(20, () -> { });
                display.sleep();
            }
        }
        assertTrue(condition.getAsBoolean(), "waited " + WAIT_SECONDS + " s for: " + what);
    }

    /** Lets the window work off what is queued, until it and the jobs have rested longer than any delay of a picture. */
    static void settle() {
        Display display = Display.getCurrent();
        long now = System.nanoTime();
        long end = now + SETTLED_MS * 1_000_000L;
        long busy = now;
        while (now < end && now < busy + REST_MS * 1_000_000L) {
            boolean worked = display.readAndDispatch();
            if (!worked) {
                pause();
            }
            now = System.nanoTime();
            busy = worked || Job.getJobManager().find(Background.FAMILY).length > 0 ? now : busy;
        }
    }

    /** A timer that wakes the display would count as work of the window. */
    private static void pause() {
        try {
            Thread.sleep(5);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Opens a workspace as a person does, and waits for it. */
    static Session open(Path folder) {
        OpenWorkspace.open(window(), folder);
        until("workspace " + folder, () -> Session.current().filter(s -> s.folder().equals(folder.toAbsolutePath().normalize()))
                .isPresent());
        settle();
        return Session.current().orElseThrow();
    }

    /** Closes editors without saving, and the workspace. */
    static void closeAll() {
        page().closeAllEditors(false);
        Session.end();
        settle();
    }

    /** Every control below a composite that a test wants. */
    static List<Control> find(Composite below, Predicate<Control> wanted) {
        List<Control> found = new ArrayList<>();
        for (Control child : below.getChildren()) {
            if (wanted.test(child)) {
                found.add(child);
            }
            if (child instanceof Composite composite) {
                found.addAll(find(composite, wanted));
            }
        }
        return found;
    }

    /** The visible field of a feature. */
    static <T extends Control> T field(Composite below, String feature, Class<T> type) {
        List<Control> fields = find(below, c -> feature.equals(c.getData("field")) && c.isVisible());
        assertTrue(!fields.isEmpty(), "no field " + feature);
        return type.cast(fields.get(0));
    }

    /** A click with the left button at a place of a control. */
    static void click(Control control, int x, int y) {
        for (int type : new int[] { SWT.MouseDown, SWT.MouseUp }) {
            Event event = new Event();
            event.button = 1;
            event.x = x;
            event.y = y;
            control.notifyListeners(type, event);
        }
    }

    /** Closes a dialog of this title as soon as it is open. */
    static void closeWhenOpen(String title) {
        Display display = Display.getCurrent();
        display.timerExec(200, new Runnable() {
            @Override
            public void run() {
                for (Shell shell : display.getShells()) {
                    if (!shell.isDisposed() && title.equals(shell.getText())) {
                        shell.close();
                        return;
                    }
                }
                display.timerExec(200, this);
            }
        });
    }

    /** Puts a picture of the window beside the test results. */
    static void picture(String name) {
        picture(window().getShell(), name);
    }

    /** Puts a picture of a window or dialog beside the test results. */
    static void picture(Shell shell, String name) {
        shell.forceActive();
        settle();
        Rectangle bounds = shell.getClientArea();
        Image image = new Image(shell.getDisplay(), bounds.width, bounds.height);
        GC gc = new GC(shell);
        try {
            gc.copyArea(image, 0, 0);
            Path folder = Path.of("target", "screenshots").toAbsolutePath();
            Files.createDirectories(folder);
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] { image.getImageData() };
            loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
        } catch (IOException e) {
            throw new IllegalStateException("The picture " + name + " could not be written", e);
        } finally {
            gc.dispose();
            image.dispose();
        }
    }
}
