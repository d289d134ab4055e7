// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.nesting.Want;

/**
 * Pieces of a part that need not be made.
 *
 * @param want     {@link Want#MAY} or {@link Want#FILLER}
 * @param quantity at most, at least 1
 */
public record OptionalPieces(Want want, int quantity) {
}
