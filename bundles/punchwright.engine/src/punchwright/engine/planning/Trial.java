// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

/**
 * One way to lay out the parts of a sheet job.
 *
 * @param webMm         web between neighbours
 * @param shared        whether the web is one cut that neighbours share
 * @param oneDirection  whether each part lies in its first direction only
 * @param outlines      whether parts lie by their true outlines, else by their boxes
 */
record Trial(double webMm, boolean shared, boolean oneDirection, boolean outlines) {

    /** By boxes. */
    Trial(double webMm, boolean shared, boolean oneDirection) {
        this(webMm, shared, oneDirection, false);
    }

    /** The same by true outlines. */
    Trial byOutlines() {
        return new Trial(webMm, shared, oneDirection, true);
    }

    List<Double> anglesDeg(PartDemand demand) {
        return oneDirection ? demand.anglesDeg().subList(0, 1) : demand.anglesDeg();
    }

    /** The same web with each part in one direction. */
    Trial inOneDirection() {
        return new Trial(webMm, shared, true, outlines);
    }
}
