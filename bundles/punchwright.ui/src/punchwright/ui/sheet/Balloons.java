// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.eclipse.swt.graphics.Rectangle;

/**
 * Where the reference balloons of the tools stand: in a row above the sheet, leaders to one hit of each tool, in the order of the
 * hits from left to right so that no two leaders cross (ISO 6433: references in rows or columns outside the outlines, leaders not
 * crossing).
 */
final class Balloons {

    /** Diameter on the screen. */
    static final int SIZE_PX = 22;
    private static final int GAP_PX = 5;

    private Balloons() {
    }

    /**
     * One balloon.
     *
     * @param balloon number in it
     * @param group   its tool's hits
     * @param hit     the hit that the leader shows
     * @param px      centre
     * @param py      centre
     */
    record Balloon(int balloon, HitGroup group, int hit, int px, int py) {

        boolean holds(int x, int y) {
            return Math.hypot(x - px, y - py) <= SIZE_PX / 2.0 + 1;
        }
    }

    /** Balloons for a scene in a window: one for each tool that has a hit in sight. */
    static List<Balloon> place(Scene scene, Viewport view, Rectangle window, Shown shown) {
        List<int[]> anchors = new ArrayList<>();
        for (int g = 0; g < scene.groups().size(); g++) {
            HitGroup group = scene.groups().get(g);
            int hit = shown.tool() > 0 && shown.tool() != group.balloon()
                    ? -1 : highest(group, shown.holding(), anchors, scene, view, window);
            if (hit >= 0) {
                anchors.add(new int[] { g, hit });
            }
        }
        anchors.sort(Comparator.comparingDouble(a -> scene.groups().get(a[0]).x(a[1])));
        return inRow(scene, view, window.width, anchors);
    }

    private static List<Balloon> inRow(Scene scene, Viewport view, int windowWidth, List<int[]> anchors) {
        int step = SIZE_PX + GAP_PX;
        int row = Math.max(SIZE_PX, view.py(scene.lengthMm() > 0 ? scene.widthMm() : scene.box()[3]) - 2 * SIZE_PX);
        int[] at = new int[anchors.size()];
        for (int k = 0; k < at.length; k++) {
            HitGroup group = scene.groups().get(anchors.get(k)[0]);
            int wanted = view.px(group.x(anchors.get(k)[1]));
            at[k] = k == 0 ? Math.max(SIZE_PX, wanted) : Math.max(at[k - 1] + step, wanted);
        }
        int limit = windowWidth - SIZE_PX;
        for (int k = at.length - 1; k >= 0; k--) {
            at[k] = Math.min(at[k], limit);
            limit = at[k] - step;
        }
        List<Balloon> placed = new ArrayList<>();
        for (int k = 0; k < at.length; k++) {
            HitGroup group = scene.groups().get(anchors.get(k)[0]);
            placed.add(new Balloon(group.balloon(), group, anchors.get(k)[1], at[k], row));
        }
        return placed;
    }

    /** The hit in sight nearest to the upper edge, and among like ones the one farthest from the leaders already set. */
    private static int highest(HitGroup group, int holdingShown, List<int[]> taken, Scene scene, Viewport view,
            Rectangle window) {
        int best = -1;
        double bestScore = -Double.MAX_VALUE;
        for (int i = 0; i < group.size(); i++) {
            boolean counts = holdingShown < 0 || group.holding(i) == holdingShown;
            if (!counts || !window.contains(view.px(group.x(i)), view.py(group.y(i)))) {
                continue;
            }
            double apart = scene.lengthMm() / 8;
            for (int[] other : taken) {
                apart = Math.min(apart, Math.abs(scene.groups().get(other[0]).x(other[1]) - group.x(i)));
            }
            double score = group.y(i) + apart;
            if (score > bestScore) {
                bestScore = score;
                best = i;
            }
        }
        return best;
    }
}
