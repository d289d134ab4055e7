// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

import punchwright.engine.geometry.Shape;

/**
 * A part to be laid out.
 *
 * @param id         stable id
 * @param shape      in its own coordinates, mm
 * @param quantity   pieces needed, or at most wanted, at least 1
 * @param anglesDeg  rotations that grain and visible face allow, not empty
 * @param webMm      least distance to the next part
 * @param want       whether the pieces must be made, may be made, or only fill up
 * @param pieceValue what a piece is worth that may be made or fills up, in the library's currency; unused for a must
 * @param openings   openings in which other parts may lie; true shapes only
 */
public record NestPart(String id, Shape shape, int quantity, List<Double> anglesDeg, double webMm, Want want,
        double pieceValue, List<UsableOpening> openings) {

    public NestPart {
        openings = List.copyOf(openings);
    }

    /** A part in whose openings nothing lies. */
    public NestPart(String id, Shape shape, int quantity, List<Double> anglesDeg, double webMm, Want want, double pieceValue) {
        this(id, shape, quantity, anglesDeg, webMm, want, pieceValue, List.of());
    }

    /** The same part with openings in which others may lie. */
    public NestPart with(List<UsableOpening> others) {
        return new NestPart(id, shape, quantity, anglesDeg, webMm, want, pieceValue, others);
    }

    /** A part of which all pieces must be made. */
    public NestPart(String id, Shape shape, int quantity, List<Double> anglesDeg, double webMm) {
        this(id, shape, quantity, anglesDeg, webMm, Want.MUST, 0);
    }
}
