// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * An opening whose waste falls as one piece, so that smaller parts can be made from it before it is cut out.
 *
 * @param hole    index among the part's holes
 * @param clearMm least distance of a part in it from the opening's edge: how far the cut along the edge reaches into the waste,
 *                and the web
 */
public record UsableOpening(int hole, double clearMm) {
}
