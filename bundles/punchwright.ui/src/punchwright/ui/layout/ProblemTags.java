// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.planner.layouts.PieceProblem;
import punchwright.ui.sheet.Pen;
import punchwright.ui.sheet.Signs;
import punchwright.ui.sheet.Viewport;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * What is wrong, said beside its place: the sign with the number of the table, the word and a leader that ends in a dot on the place
 * (ISO 6433). Tags give way to each other downward.
 */
final class ProblemTags {

    private static final int MOST = 12;
    private static final int SIGN_PX = 20;
    private static final int AWAY_PX = 12;
    private static final int TRIES = 12;

    private final GC gc;
    private final Viewport view;
    private final List<Rectangle> taken = new ArrayList<>();

    ProblemTags(GC gc, Viewport view) {
        this.gc = gc;
        this.view = view;
    }

    void draw(List<PieceProblem> problems) {
        for (int i = 0; i < Math.min(MOST, problems.size()); i++) {
            PieceProblem p = problems.get(i);
            int number = i + 1;
            p.finding().placeIfAny().ifPresent(at -> problem(number, ProblemWords.brief(p), view.px(at.x()), view.py(at.y())));
        }
    }

    private void problem(int number, String word, int px, int py) {
        Point size = gc.textExtent(word);
        Rectangle box = free(new Rectangle(px + AWAY_PX, py + AWAY_PX, size.x + SIGN_PX + 10, Math.max(size.y, SIGN_PX) + 4));
        Pen.thin(gc, Ink.GRAPHITE);
        gc.drawLine(px, py, box.x + SIGN_PX / 2, box.y + box.height / 2);
        gc.setBackground(Inks.of(Ink.GRAPHITE));
        gc.fillOval(px - 2, py - 2, 5, 5);
        frame(box, Ink.ERROR);
        gc.drawText(word, box.x + SIGN_PX + 5, box.y + (box.height - size.y) / 2, true);
        Signs.numbered(gc, 0, number, box.x + SIGN_PX / 2 + 1, box.y + box.height / 2, SIGN_PX);
    }

    /** The first place downward where no other tag lies. */
    private Rectangle free(Rectangle wanted) {
        for (int k = 0; k < TRIES && taken.stream().anyMatch(wanted::intersects); k++) {
            wanted.y += wanted.height + 3;
        }
        taken.add(wanted);
        return wanted;
    }

    private void frame(Rectangle box, Ink ink) {
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(box);
        Pen.thin(gc, ink);
        gc.drawRectangle(box);
    }

    /** Words on paper with a thin frame, about a middle column. */
    void tag(String text, int px, int py, Ink ink) {
        Point size = gc.textExtent(text);
        Rectangle box = new Rectangle(px - size.x / 2 - 4, py, size.x + 8, size.y + 2);
        frame(box, ink);
        gc.drawText(text, box.x + 4, py + 1, true);
    }
}
