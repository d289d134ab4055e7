// SPDX-License-Identifier: EPL-2.0
/**
 * Purpose: what a part consists of, in the words of the trade: openings, edges, forms.
 * Input: the shape of a part. Result: {@link punchwright.engine.feature.FeatureSet}, features numbered from 1: openings in the
 * order of the shape, then the edges of the outer contour in order, covering it once.
 * Way: each contour is first tidied to one segment an edge; then a table of matchers estimates kind, size, centre and angle
 * from the exact segments, builds the ideal contour and accepts it only when the drawn one lies on it within the tolerance.
 * Why estimate and verify: the check is the same for every kind and does not depend on how the contour was drawn.
 * Measured by: generated parts of every kind at random angle, size, order and direction with noise (property test).
 */
package punchwright.engine.feature;
