// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the numbered signs of findings stand: beside their places with a leader, each at the first spot round its place that
 * no other sign takes, so that findings at one place can be told apart.
 */
final class MarkSigns {

    /** Size of a sign. */
    static final int SIZE_PX = 24;
    private static final int AWAY_PX = 18;
    private static final int SPOTS = 8;
    private static final int RINGS = 3;
    /** Beyond so many signs they may cover each other: nobody reads them at that scale. */
    private static final int MOST_APART = 400;

    private MarkSigns() {
    }

    /** One sign: its mark, the pixel of its place and of its own middle. */
    record Sign(Scene.Mark mark, int placePx, int placePy, int px, int py) {

        boolean holds(int x, int y) {
            return Math.hypot(x - px, y - py) <= SIZE_PX / 2.0 + 1;
        }
    }

    static List<Sign> place(Scene scene, Viewport view) {
        List<Sign> placed = new ArrayList<>();
        for (Scene.Mark mark : scene.marks()) {
            if (mark.number() > 0) {
                placed.add(spot(mark, view.px(mark.x()), view.py(mark.y()), placed));
            }
        }
        return placed;
    }

    private static Sign spot(Scene.Mark mark, int x, int y, List<Sign> placed) {
        for (int ring = 0; ring < RINGS && placed.size() < MOST_APART; ring++) {
            for (int k = 0; k < SPOTS; k++) {
                double angle = -Math.PI / 4 + 2 * Math.PI * k / SPOTS;
                double away = (AWAY_PX + ring * SIZE_PX) * Math.sqrt(2);
                Sign sign = new Sign(mark, x, y, x + (int) Math.round(away * Math.cos(angle)),
                        y + (int) Math.round(away * Math.sin(angle)));
                if (placed.stream().noneMatch(p -> Math.hypot(p.px - sign.px, p.py - sign.py) < SIZE_PX)) {
                    return sign;
                }
            }
        }
        return new Sign(mark, x, y, x + AWAY_PX, y - AWAY_PX);
    }
}
