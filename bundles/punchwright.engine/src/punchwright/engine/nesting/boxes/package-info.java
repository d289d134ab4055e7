// SPDX-License-Identifier: EPL-2.0
/**
 * Rectangles in equal bins: the core of layouts by bounding boxes.
 *
 * <p>Input: integer boxes with their allowed turns and one bin size. Result: boxes in as few bins as found, and a lower bound.
 * Entry: {@link punchwright.engine.nesting.boxes.BinSearch}.
 *
 * <p>Algorithm: a first packing by maximal free rectangles; then the emptiest bin is dissolved into a pool and bins are emptied
 * and filled again together with pool boxes until the pool is empty, boxes that stay in the pool gaining weight (guided local
 * search; ejection pools after Nagata and Braysy, Operations Research Letters 37, 2009). Each success starts over with one bin
 * less, until the lower bound or the work limit.
 *
 * <p>Measured by: published two-dimensional bin-packing instances with known best bin counts.
 */
package punchwright.engine.nesting.boxes;
