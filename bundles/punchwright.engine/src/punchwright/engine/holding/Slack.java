// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.List;

/** The range of carriage positions around a found one that serve the same needs, and a sensible position in it. */
record Slack(double low, double high) {

    static Slack of(Rig rig, double[] clamps, Stand stand, List<Need> needs) {
        double low = rig.leastZero(clamps);
        double high = rig.largestZero(clamps);
        int side = stand.side();
        for (Need n : needs) {
            low = Math.max(low, n.x()[side] - rig.travelMm);
            high = Math.min(high, n.x()[side]);
            if (n.nearEdge()[side]) {
                for (double u : clamps) {
                    double center = n.x()[side] - u;
                    if (center > stand.zero()) {
                        high = Math.min(high, center - n.keepMm());
                    } else {
                        low = Math.max(low, center + n.keepMm());
                    }
                }
            }
        }
        return new Slack(Math.min(low, stand.zero()), Math.max(high, stand.zero()));
    }

    /** The position nearest to the wish, in whole millimetres where the range holds one. */
    double nearest(double wish) {
        double rounded = Math.rint(Math.max(low, Math.min(high, wish)));
        return rounded < low ? Math.ceil(low) <= high ? Math.ceil(low) : low
                : rounded > high ? Math.floor(high) >= low ? Math.floor(high) : high : rounded;
    }
}
