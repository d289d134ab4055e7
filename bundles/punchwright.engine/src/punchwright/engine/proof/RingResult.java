// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;

/**
 * What the strokes near one edge do to it; places about the ring's anchor.
 *
 * @param gaps     stretches of the waste side left uncut
 * @param gouges   strokes that enter the part
 * @param slugs    loose pieces inside an opening
 * @param worstMm  largest deviation seen where the edge is cut
 */
record RingResult(List<Gap> gaps, List<Gouge> gouges, List<Loose> slugs, double worstMm) {

    /** An uncut stretch; {@code stub} lies in the uncut metal just beyond its middle. */
    record Gap(Coordinate from, Coordinate middle, Coordinate to, Coordinate stub, double lengthMm) {
    }

    /** A stroke (index among those looked at) that enters the part. */
    record Gouge(int stroke, Coordinate at, double depthMm) {
    }

    /** A loose piece with the sides of the smallest rectangle about it. */
    record Loose(Coordinate at, double longerMm, double shorterMm) {
    }
}
