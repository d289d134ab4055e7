// SPDX-License-Identifier: EPL-2.0
/**
 * Purpose: parts whose features are known because they were drawn from them, for tests and benchmarks.
 * Input: a seed and a number. Result: {@link punchwright.synthetic.SyntheticPart}, a DXF text with the true features.
 * Way: sizes are drawn at random, points follow from plane geometry written here once more, since the engine's own
 * formulas are what is tested; then lines and arcs are split, shaken, shuffled and written as entities of several types.
 * Why whole drawings: reading, chaining, tidying and recognition are tested together, as a customer's file meets them.
 * Margins: kinds that noise would make one and the same are kept apart; each margin is named where it is used.
 * Measured by: the features found by the engine are held against the true ones in PartComparison.
 */
package punchwright.synthetic;
