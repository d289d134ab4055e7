// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

/**
 * One way to lay out the parts of a sheet job.
 *
 * @param webMm         web between neighbours
 * @param shared        whether the web is one cut that neighbours share
 * @param oneDirection  whether each part lies in its first direction only
 */
record Trial(double webMm, boolean shared, boolean oneDirection) {

    List<Double> anglesDeg(PartDemand demand) {
        return oneDirection ? demand.anglesDeg().subList(0, 1) : demand.anglesDeg();
    }

    /** The same web with each part in one direction. */
    Trial inOneDirection() {
        return new Trial(webMm, shared, true);
    }
}
