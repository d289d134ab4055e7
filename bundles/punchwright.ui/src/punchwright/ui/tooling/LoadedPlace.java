// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;

import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.model.shop.Tool;

/**
 * What stands in one place of the machine.
 *
 * @param place  the place; null for what is set by hand during the run
 * @param holder the multi-tool holder in it; null for a tool alone
 * @param tools  the tool, or the inserts in order
 */
public record LoadedPlace(Place place, MultiToolHolder holder, List<Loaded> tools) {

    /**
     * A tool as it stands ready.
     *
     * @param number            balloon number
     * @param tool              which tool
     * @param insert            insert of the holder from 1; 0 when alone
     * @param angleDeg          set angle where it does not turn
     * @param turns             whether it can be set to any angle here
     * @param clearanceMm       total die clearance chosen; 0 where there is none
     * @param clearanceWantedMm by the material's rule
     * @param forceKn           largest punching force of a hit
     * @param limitKn           what the place, and the holder, take
     */
    public record Loaded(int number, Tool tool, int insert, double angleDeg, boolean turns, double clearanceMm,
            double clearanceWantedMm, double forceKn, double limitKn) {

        /** Force in per cent of the limit, without reserve; 0 where there is no limit. */
        public double percent() {
            return limitKn <= 0 ? 0 : 100 * forceKn / limitKn;
        }
    }
}
