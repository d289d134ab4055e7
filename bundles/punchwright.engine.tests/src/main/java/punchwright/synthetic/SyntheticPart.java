// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.List;

/**
 * A part drawn at random.
 *
 * @param number   by which it can be made again
 * @param dxf      the drawing
 * @param noiseMm  no point of a drawn edge lies farther than this from the true edge (chords of arcs: their corners)
 * @param openings what it has inside, those of patterns included
 * @param details  what its outline has
 * @param edges    number of straight and round edges of its outline
 * @param patterns which openings lie regularly
 */
public record SyntheticPart(long number, String dxf, double noiseMm, List<TrueOpening> openings,
        List<TrueDetail> details, int edges, List<TruePattern> patterns) {
}
