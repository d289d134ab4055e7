// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Function;

import punchwright.engine.nesting.Nesting;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.Piece;
import punchwright.planner.layouts.PieceProblem;
import punchwright.ui.sheet.Scene;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.text.Texts;

/** The sheet that is being arranged: what is selected, what lies in the hand, and every change of it as one command. */
public final class SheetBench {

    /** Figures that take longer are not worked out while the hand moves. */
    private static final long QUICK_MS = 25;

    private final SheetCanvas canvas;
    private final KeptEdits edits;
    private final ArrangedScene scenes;
    private Runnable onChange = () -> { };

    private BenchRow row;
    private List<Integer> selected = List.of();
    private ArrangedSheet inHand;
    private List<PieceProblem> live = List.of();
    private Nesting liveFigures;
    private long figuresMs;

    SheetBench(SheetCanvas canvas, KeptEdits edits, Function<String, String> labels) {
        this.canvas = canvas;
        this.edits = edits;
        scenes = new ArrangedScene(labels);
        canvas.setHand(new PieceHand(this, canvas));
    }

    /** Called when the selection or what lies in the hand changes. */
    void onChange(Runnable what) {
        onChange = what;
    }

    /** Shows a layout, null for none; the selection stays with the same layout. */
    void show(BenchRow now) {
        boolean same = row != null && now != null && row.kept() == now.kept();
        row = now;
        inHand = null;
        liveFigures = null;
        figuresMs = 0;
        live = List.of();
        if (now == null || now.sheet() == null) {
            selected = List.of();
            canvas.setScene(Scene.EMPTY);
            return;
        }
        int count = now.sheet().pieces().size();
        selected = same ? selected.stream().filter(i -> i < count).toList() : List.of();
        Scene scene = scenes.of(now.sheet());
        if (same) {
            canvas.updateScene(scene);
        } else {
            canvas.setScene(scene);
        }
    }

    /** The sheet as it is seen, with the piece in the hand; null when none is shown. */
    public ArrangedSheet sheet() {
        return inHand != null ? inHand : row == null ? null : row.sheet();
    }

    /** What is wrong: with the piece in the hand, else with the sheet. */
    public List<PieceProblem> problems() {
        return inHand != null ? live : row == null ? List.of() : row.problems();
    }

    /** Use, cost, remnants, also with a piece in the hand; where they take too long, those from before. Null without a sheet. */
    Nesting figures() {
        return inHand != null && liveFigures != null ? liveFigures : row == null ? null : row.figures();
    }

    boolean hasInHand() {
        return inHand != null;
    }

    ArrangedScene scenes() {
        return scenes;
    }

    BenchRow row() {
        return row;
    }

    /** Indices of the selected pieces, from 0. */
    public List<Integer> selected() {
        return selected;
    }

    /** Selects pieces by index. */
    public void select(List<Integer> indices) {
        if (!selected.equals(indices)) {
            selected = List.copyOf(indices);
            canvas.redraw();
            onChange.run();
        }
    }

    /** Selects the next piece (1) or the one before (-1) and brings it into sight. */
    void step(int by) {
        int count = sheet() == null ? 0 : sheet().pieces().size();
        if (count > 0) {
            int next = selected.isEmpty() ? by > 0 ? 0 : count - 1 : Math.floorMod(selected.getFirst() + by, count);
            select(List.of(next));
            var box = sheet().box(sheet().pieces().get(next));
            canvas.show((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
        }
    }

    /** The piece at a place in mm, -1 for none. */
    int at(double x, double y) {
        for (int i = sheet() == null ? -1 : sheet().pieces().size() - 1; i >= 0; i--) {
            Piece piece = sheet().pieces().get(i);
            if (scenes.contours(sheet(), piece).stream().limit(1).anyMatch(o -> o.contains(x, y))) {
                return i;
            }
        }
        return -1;
    }

    /** Takes a piece into the hand: the picture goes on without it, and the hand draws it. */
    void take(int index) {
        inHand = row.sheet();
        live = List.of();
        Scene all = scenes.of(inHand);
        canvas.updateScene(new Scene(all.lengthMm(), all.widthMm(),
                all.parts().stream().filter(p -> p.number() != index + 1).toList(), List.of(), List.of(), List.of(), List.of()));
    }

    /** What lies in the hand lies elsewhere now. */
    void hold(ArrangedSheet sheet, int index) {
        inHand = sheet;
        live = sheet.problemsOf(index);
        if (figuresMs <= QUICK_MS) {
            long start = System.nanoTime();
            liveFigures = sheet.figures();
            figuresMs = (System.nanoTime() - start) / 1_000_000;
        }
        canvas.redraw();
        onChange.run();
    }

    /** Lets the piece lie where the hand holds it. */
    void putDown(int index) {
        ArrangedSheet held = inHand;
        inHand = null;
        live = List.of();
        if (!change("layouts.do.move", held, index + 1)) {
            show(row);
            onChange.run();
        }
    }

    /** Puts the piece back where it was. */
    void putBack() {
        show(row);
        onChange.run();
    }

    private boolean change(String key, ArrangedSheet sheet, Object... arguments) {
        return row != null && sheet != null && edits.arrange(Texts.of(key, arguments), row.kept(), sheet);
    }

    private boolean isFree() {
        return !selected.isEmpty() && row != null && row.sheet() != null
                && !row.sheet().pieces().get(selected.getFirst()).locked();
    }

    /** Moves the first selected piece by mm; locked ones stay. */
    public boolean nudge(double dx, double dy) {
        if (!isFree()) {
            return false;
        }
        int i = selected.getFirst();
        Piece p = row.sheet().pieces().get(i);
        return change("layouts.do.move", row.sheet().moved(i, round(p.xMm() + dx), round(p.yMm() + dy)), i + 1);
    }

    /** Steps of a nudge do not pile up errors of binary fractions: places are kept to a millionth of a mm. */
    private static double round(double mm) {
        return Math.round(mm * 1e6) / 1e6;
    }

    /** Moves the first selected piece on to the next margin, neighbour or line. */
    public boolean push(int stepX, int stepY) {
        return isFree() && change("layouts.do.move", row.sheet().pushed(selected.getFirst(), stepX, stepY),
                selected.getFirst() + 1);
    }

    /** Turns the first selected piece to the next allowed angle, or the one before. */
    public boolean turn(int by) {
        return isFree() && change("layouts.do.turn", row.sheet().turned(selected.getFirst(), by), selected.getFirst() + 1);
    }

    /** Locks the selected pieces; unlocks them where all are locked. */
    public boolean lock() {
        if (selected.isEmpty() || row == null || row.sheet() == null) {
            return false;
        }
        boolean lock = selected.stream().anyMatch(i -> !row.sheet().pieces().get(i).locked());
        ArrangedSheet sheet = row.sheet();
        for (int i : selected) {
            sheet = sheet.locked(i, lock);
        }
        return change(lock ? "layouts.do.lock" : "layouts.do.unlock", sheet, selected.size());
    }

    /** Takes the selected pieces off the sheet. */
    public boolean remove() {
        if (selected.isEmpty() || row == null || row.sheet() == null) {
            return false;
        }
        List<Integer> gone = selected;
        selected = List.of();
        return change("layouts.do.remove", row.sheet().without(new LinkedHashSet<>(gone)), gone.size());
    }

    /** Puts one more piece of a part on the sheet and selects it. */
    public boolean add(String partId) {
        if (row == null || row.sheet() == null || row.sheet().job().parts().stream().noneMatch(p -> p.id().equals(partId))) {
            return false;
        }
        boolean added = change("layouts.do.add", row.sheet().added(partId), row.sheet().pieces().size() + 1);
        if (added) {
            select(List.of(row.sheet().pieces().size() - 1));
        }
        return added;
    }

    /** Puts one more piece of the first selected piece's part on the sheet. */
    boolean addSame() {
        return !selected.isEmpty() && sheet() != null && add(sheet().pieces().get(selected.getFirst()).partId());
    }
}
