// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.List;
import java.util.function.IntConsumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

import punchwright.ui.table.Accessibles;
import punchwright.ui.theme.Ink;

/**
 * The picture of a sheet: pan with the left button or the arrow keys, zoom with the wheel or + and -, 0 or Home shows all, a
 * click selects a hit, Page Down and Page Up step through the run. What is drawn is kept as an image; while a large sheet is
 * moved, the kept image is moved and the drawing follows when the hand rests.
 */
public final class SheetCanvas extends Canvas {

    private static final int MARGIN_PX = 64;
    private static final int STEP_PX = 60;
    private static final double ZOOM_STEP = 1.25;
    private static final int REST_MS = 60;
    private static final long SLOW_MS = 30;
    private static final int DRAG_FROM_PX = 3;

    private Scene scene = Scene.EMPTY;
    private Viewport view = new Viewport(1, 0, 0);
    private boolean fitted = true;
    private Shown shown = Shown.ALL;
    private int selected = -1;
    private List<double[]> emphasis = List.of();
    private int selectedMark;
    private int selectedPiece;

    private final KeptPicture picture = new KeptPicture();
    private SheetHand hand = SheetHand.NONE;
    private boolean inHand;

    private Point pressed;
    private Viewport pressedView;
    private IntConsumer onSelect = number -> { };
    private IntConsumer onMark = number -> { };
    private IntConsumer onPiece = number -> { };
    private Runnable onMove = () -> { };
    private double pointerX;
    private double pointerY;

    /** A canvas with the accessible name {@code name}. */
    public SheetCanvas(Composite parent, String name) {
        super(parent, SWT.NO_BACKGROUND | SWT.DOUBLE_BUFFERED);
        Accessibles.name(this, name);
        addPaintListener(this::paint);
        addDisposeListener(e -> picture.forget());
        addListener(SWT.Resize, e -> resized());
        addListener(SWT.MouseWheel, this::wheel);
        addListener(SWT.MouseDown, this::down);
        addListener(SWT.MouseMove, this::move);
        addListener(SWT.MouseUp, this::up);
        addListener(SWT.MouseDoubleClick, e -> fit());
        addListener(SWT.Traverse, e -> e.doit = e.detail != SWT.TRAVERSE_PAGE_NEXT && e.detail != SWT.TRAVERSE_PAGE_PREVIOUS);
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        addKeyListener(KeyListener.keyPressedAdapter(this::key));
    }

    /** Shows a scene, all of it in sight. */
    public void setScene(Scene newScene) {
        scene = newScene;
        selected = -1;
        emphasis = List.of();
        selectedMark = 0;
        selectedPiece = 0;
        shown = Shown.ALL.withBalloons(shown.balloons());
        fit();
    }

    /** Shows other hits or marks of the same sheet and leaves the view where it is. */
    public void updateScene(Scene newScene) {
        scene = newScene;
        refresh();
    }

    /** Draws these lines, x and y in turn in mm, thick over everything: what is selected beside the picture. */
    public void emphasise(List<double[]> lines) {
        emphasis = List.copyOf(lines);
        redraw();
    }

    /** The lines that are emphasised. */
    public List<double[]> emphasis() {
        return emphasis;
    }

    /** Draws the hits of this holding only, the others faint; -1 all. */
    public void showHolding(int index) {
        shown = shown.withHolding(index);
        refresh();
    }

    /** Draws the hits of this tool only, the others faint; 0 all. */
    public void showTool(int balloon) {
        if (balloon != shown.tool()) {
            shown = shown.withTool(balloon);
            refresh();
        }
    }

    /** Switches the balloons. */
    public void showBalloons(boolean show) {
        shown = shown.withBalloons(show);
        refresh();
    }

    /** Called with the number of the hit in the run when a person selects one, -1 for none. */
    public void onSelect(IntConsumer what) {
        onSelect = what;
    }

    /** Called with the number of a finding's place when a person selects one, 0 for none. */
    public void onMark(IntConsumer what) {
        onMark = what;
    }

    /** Called with the number of a piece when a person clicks into one of a drawing, 0 for none. */
    public void onPiece(IntConsumer what) {
        onPiece = what;
    }

    /** Rings the place of a finding and brings it into the middle; 0 for none. */
    public void selectMark(int number) {
        selectedMark = number;
        scene.marks().stream().filter(m -> m.number() == number && number > 0).findFirst().ifPresent(m -> centre(m.x(), m.y()));
        redraw();
    }

    /** Outlines the pieces of a number in the accent; 0 for none. */
    public void selectPiece(int number) {
        selectedPiece = number;
        scene.parts().stream().filter(p -> p.number() == number && number > 0).findFirst()
                .ifPresent(p -> show((p.box()[0] + p.box()[2]) / 2, (p.box()[1] + p.box()[3]) / 2));
        redraw();
    }

    /** The number of the finding's place that is ringed, 0 for none. */
    public int selectedMark() {
        return selectedMark;
    }

    private void centre(double x, double y) {
        Point size = getSize();
        fitted = false;
        moveTo(view.panned(size.x / 2 - view.px(x), size.y / 2 - view.py(y)));
    }

    /** Gives the hand to something that takes it before the picture does. */
    public void setHand(SheetHand other) {
        hand = other;
    }

    /** Called when the pointer moves over the paper. */
    public void onMove(Runnable what) {
        onMove = what;
    }

    /** Pointer on the paper, mm. */
    public double pointerX() {
        return pointerX;
    }

    /** Pointer on the paper, mm. */
    public double pointerY() {
        return pointerY;
    }

    /** What is shown. */
    public Scene scene() {
        return scene;
    }

    /** Where the paper lies. */
    public Viewport view() {
        return view;
    }

    /** The selected hit's number in the run, or -1. */
    public int selected() {
        return selected;
    }

    /** Milliseconds that the last full drawing took. */
    public long lastDrawMs() {
        return picture.drawMs();
    }

    /** Selects a hit by its number in the run and brings it into sight. */
    public void select(int number) {
        selected = number;
        find(number, (group, i) -> show(group.x(i), group.y(i)));
        redraw();
    }

    /** Brings a place into the middle of the window when it is out of sight. */
    public void show(double x, double y) {
        Point size = getSize();
        int px = view.px(x);
        int py = view.py(y);
        if (px < 10 || py < 10 || px > size.x - 10 || py > size.y - 10) {
            moveTo(view.panned(size.x / 2 - px, size.y / 2 - py));
        }
    }

    /** Goes to a place and shows it large enough to be seen: at least 2 px/mm. */
    public void goTo(double x, double y) {
        Point size = getSize();
        double scale = Math.max(view.pxPerMm(), 2);
        fitted = false;
        moveTo(new Viewport(scale, x - size.x / 2.0 / scale, y + size.y / 2.0 / scale));
    }

    /** Shows all. */
    public void fit() {
        Point size = getSize();
        double[] box = scene.box();
        view = Viewport.fit(box[0], box[1], box[2], box[3], size.x, size.y, MARGIN_PX);
        fitted = true;
        refresh();
    }

    /** Zooms about the middle of the window. */
    public void zoom(boolean in) {
        Point size = getSize();
        fitted = false;
        moveTo(view.zoomed(in ? ZOOM_STEP : 1 / ZOOM_STEP, size.x / 2, size.y / 2));
    }

    private void resized() {
        if (fitted) {
            fit();
        } else {
            refresh();
        }
    }

    private void refresh() {
        picture.spoil();
        redraw();
    }

    private void moveTo(Viewport other) {
        view = other;
        if (picture.drawMs() <= SLOW_MS) {
            picture.spoil();
        } else {
            getDisplay().timerExec(REST_MS, () -> {
                if (!isDisposed() && view == other) {
                    refresh();
                }
            });
        }
        redraw();
    }

    private void paint(PaintEvent e) {
        Rectangle window = getClientArea();
        if (window.isEmpty()) {
            return;
        }
        picture.paint(e.gc, window, scene, view, shown, getFont());
        hand.paint(e.gc, view);
        SelectionPainter marked = new SelectionPainter(e.gc, scene, view);
        marked.lines(emphasis);
        marked.piece(selectedPiece);
        marked.mark(selectedMark);
        find(selected, marked::hit);
        if (isFocusControl()) {
            Pen.dotted(e.gc, Ink.ACCENT);
            e.gc.drawRectangle(1, 1, window.width - 3, window.height - 3);
        }
    }

    private void find(int number, Seen what) {
        if (number < 0) {
            return;
        }
        for (HitGroup group : scene.groups()) {
            for (int i = 0; i < group.size(); i++) {
                if (group.number(i) == number) {
                    what.at(group, i);
                    return;
                }
            }
        }
    }

    private void wheel(Event e) {
        fitted = false;
        moveTo(view.zoomed(e.count > 0 ? ZOOM_STEP : 1 / ZOOM_STEP, e.x, e.y));
        e.doit = false;
    }

    private void down(Event e) {
        setFocus();
        inHand = e.button == 1 && hand.down(view.x(e.x), view.y(e.y), e.stateMask);
        if (!inHand && (e.button == 1 || e.button == 2)) {
            pressed = new Point(e.x, e.y);
            pressedView = view;
        }
    }

    private void move(Event e) {
        pointerX = view.x(e.x);
        pointerY = view.y(e.y);
        if (inHand) {
            hand.drag(pointerX, pointerY, e.stateMask);
        } else if (pressed != null && (dragged(e) || view != pressedView)) {
            setCursor(getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
            fitted = false;
            moveTo(pressedView.panned(e.x - pressed.x, e.y - pressed.y));
        }
        onMove.run();
    }

    private boolean dragged(Event e) {
        return Math.abs(e.x - pressed.x) + Math.abs(e.y - pressed.y) > DRAG_FROM_PX;
    }

    private void up(Event e) {
        pointerX = view.x(e.x);
        pointerY = view.y(e.y);
        if (inHand) {
            inHand = false;
            hand.drop(pointerX, pointerY, e.stateMask);
            return;
        }
        boolean click = pressed != null && e.button == 1 && view == pressedView;
        pressed = null;
        setCursor(null);
        if (click && scene.groups().isEmpty() && scene.lengthMm() <= 0) {
            chooseInDrawing(e);
        } else if (click) {
            choose(Pick.hit(scene, view, view.x(e.x), view.y(e.y), shown.holding()).map(f -> f.group().number(f.hit()))
                    .orElse(-1));
        }
    }

    private void chooseInDrawing(Event e) {
        int mark = Pick.mark(scene, view, e.x, e.y);
        if (mark > 0 || selectedMark > 0) {
            selectedMark = mark;
            onMark.accept(mark);
        }
        if (mark == 0) {
            selectedPiece = Pick.piece(scene, view.x(e.x), view.y(e.y)).map(Scene.Piece::number).orElse(0);
            onPiece.accept(selectedPiece);
        }
        redraw();
    }

    private void choose(int number) {
        selected = number;
        redraw();
        onSelect.accept(number);
    }

    private void key(KeyEvent e) {
        if (hand.key(e.keyCode, e.stateMask)) {
            e.doit = false;
            return;
        }
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> pan(STEP_PX, 0);
            case SWT.ARROW_RIGHT -> pan(-STEP_PX, 0);
            case SWT.ARROW_UP -> pan(0, STEP_PX);
            case SWT.ARROW_DOWN -> pan(0, -STEP_PX);
            case SWT.HOME, '0', SWT.KEYPAD_0 -> fit();
            case '+', '=', SWT.KEYPAD_ADD -> zoom(true);
            case '-', SWT.KEYPAD_SUBTRACT -> zoom(false);
            case SWT.PAGE_DOWN -> step(1);
            case SWT.PAGE_UP -> step(-1);
            case SWT.ESC -> choose(-1);
            default -> { }
        }
    }

    private void pan(int dx, int dy) {
        fitted = false;
        moveTo(view.panned(dx, dy));
    }

    private void step(int by) {
        if (scene.hitCount() == 0) {
            stepMark(by);
            return;
        }
        int count = scene.hitCount();
        if (count > 0) {
            int next = Math.max(0, Math.min(count - 1, selected < 0 ? 0 : selected + by));
            select(next);
            onSelect.accept(next);
        }
    }

    private void stepMark(int by) {
        int[] numbers = scene.marks().stream().mapToInt(Scene.Mark::number).filter(n -> n > 0).sorted().toArray();
        if (numbers.length > 0) {
            int at = java.util.Arrays.binarySearch(numbers, selectedMark);
            int next = at < 0 ? 0 : Math.max(0, Math.min(numbers.length - 1, at + by));
            selectMark(numbers[next]);
            onMark.accept(numbers[next]);
        }
    }

    /** Told where a hit is. */
    private interface Seen {
        void at(HitGroup group, int index);
    }
}
