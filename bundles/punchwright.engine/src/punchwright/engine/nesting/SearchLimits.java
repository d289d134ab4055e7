// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * How far and how the layouts are searched.
 *
 * @param workLimit  largest number of trial placements
 * @param seed       for choices between equals
 * @param trueShapes whether parts may lie closer than their bounding boxes
 */
public record SearchLimits(long workLimit, long seed, boolean trueShapes) {
}
