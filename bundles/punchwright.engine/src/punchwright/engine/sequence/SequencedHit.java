// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import punchwright.engine.holding.SheetHit;

/** A hit in its turn: {@code holding} is the index of the holding it is made in. */
public record SequencedHit(SheetHit hit, int holding) {
}
