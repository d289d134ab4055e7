// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * What stands ready in the machine, and what it takes to make a tool ready that does not.
 *
 * @param standing    tools that stand in places between orders
 * @param loadSeconds work to make one tool ready, in seconds of the machine (the setter's rate over the machine's), 0 or more
 * @param runs        sheets over which a set-up is used, at least 1: each of them changes to each of its tools once
 */
public record Readiness(List<Standing> standing, double loadSeconds, double runs) {

    /** Nothing stands ready; two minutes a tool, common practice, no source; one sheet. */
    public static final Readiness USUAL = new Readiness(List.of(), 120, 1);

    public Readiness {
        standing = List.copyOf(standing);
        if (!(loadSeconds >= 0) || !(runs >= 1)) {
            throw new IllegalArgumentException("making ready takes " + loadSeconds + " s and serves " + runs
                    + " sheets; give 0 s or more and 1 sheet or more");
        }
    }

    /** The same for another number of sheets. */
    public Readiness over(double sheets) {
        return new Readiness(standing, loadSeconds, Math.max(1, sheets));
    }

    /**
     * A tool that stands in a place between orders.
     *
     * @param placeId  the place
     * @param toolId   the tool
     * @param holderId the holder in the place whose insert it is; null for a tool alone
     */
    public record Standing(String placeId, String toolId, String holderId) {
    }
}
