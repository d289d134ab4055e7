// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

/**
 * What counts in a picture; everything else is drawn faint.
 *
 * @param holding  index of a holding, -1 for all
 * @param tool     balloon number of a tool, 0 for all
 * @param balloons whether references are drawn
 */
public record Shown(int holding, int tool, boolean balloons) {

    /** Everything, with references. */
    public static final Shown ALL = new Shown(-1, 0, true);

    Shown withHolding(int index) {
        return new Shown(index, tool, balloons);
    }

    Shown withTool(int balloon) {
        return new Shown(holding, balloon, balloons);
    }

    Shown withBalloons(boolean show) {
        return new Shown(holding, tool, show);
    }
}
