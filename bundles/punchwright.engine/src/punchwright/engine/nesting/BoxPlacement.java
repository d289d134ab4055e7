// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** A box in a region: number of the part, number of its turn, lower left corner in ticks of the region. */
record BoxPlacement(int part, int turn, int x, int y) {
}
