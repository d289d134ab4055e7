// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import punchwright.engine.geometry.Contour;

/** Estimates what an opening is; null when it cannot be of the matcher's kinds. The estimate is verified afterwards. */
@FunctionalInterface
interface OpeningMatcher {

    /** @param contour tidied and counter-clockwise */
    Match match(Contour contour);
}
