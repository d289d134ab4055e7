// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.List;
import java.util.Optional;

/** Finds what lies under a point of the paper. */
final class Pick {

    /** How near, in pixels, a tool axis counts as hit when its outline is too small to aim at. */
    private static final double NEAR_PX = 6;

    private Pick() {
    }

    /** A hit: its group and its index there. */
    record Found(HitGroup group, int hit) {
    }

    /** The hit at a point in mm: the smallest outline over it, else the nearest axis close by. */
    static Optional<Found> hit(Scene scene, Viewport view, double x, double y, int holding) {
        double near = NEAR_PX / view.pxPerMm();
        Best best = new Best();
        for (HitGroup group : scene.groups()) {
            double reach = Math.max(group.outline().radius(), near);
            group.within(x - reach, y - reach, x + reach, y + reach, i -> {
                if (holding >= 0 && group.holding(i) != holding) {
                    return;
                }
                double apart = Math.hypot(group.x(i) - x, group.y(i) - y);
                if (apart > reach) {
                    return;
                }
                boolean over = group.outline().placed(group.angle(i), group.x(i), group.y(i)).contains(x, y);
                if (over || apart <= near) {
                    best.offer(new Found(group, i), over ? group.outline().radius() + apart / 1000 : 1e6 + apart);
                }
            });
        }
        return Optional.ofNullable(best.found);
    }

    /** The piece at a point in mm: the innermost where one lies in the opening of another. */
    static Optional<Scene.Piece> piece(Scene scene, double x, double y) {
        return scene.parts().stream().filter(p -> !p.contours().isEmpty() && p.contours().get(0).contains(x, y))
                .min(java.util.Comparator.comparingDouble(p -> p.box()[2] - p.box()[0]));
    }

    /** The number of the finding whose sign lies under a pixel, else of the first whose place does, 0 for none. */
    static int mark(Scene scene, Viewport view, int px, int py) {
        List<MarkSigns.Sign> signs = MarkSigns.place(scene, view);
        return signs.stream().filter(s -> s.holds(px, py)).findFirst()
                .or(() -> signs.stream().filter(s -> Math.hypot(px - s.placePx(), py - s.placePy()) <= NEAR_PX).findFirst())
                .map(s -> s.mark().number()).orElse(0);
    }

    private static final class Best {
        private Found found;
        private double rank = Double.MAX_VALUE;

        void offer(Found candidate, double candidateRank) {
            if (candidateRank < rank) {
                rank = candidateRank;
                found = candidate;
            }
        }
    }
}
