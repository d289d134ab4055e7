// SPDX-License-Identifier: EPL-2.0
/**
 * True shapes without overlap.
 *
 * <p>Input: polygons with allowed angles and a strip's width. Result: their places in the shortest strip found. Entry:
 * {@link punchwright.engine.nesting.shapes.StripSearch}.
 *
 * <p>Algorithm: overlap is allowed while searching and removed by guided local search (Voudouris and Tsang, European Journal
 * of Operational Research 113, 1999; for polygons Egeblad, Nielsen and Odgaard, the same journal 183, 2007): pieces move one
 * at a time to the best of sampled places, overlaps that stay gain weight. Whether two shapes overlap is decided exactly on
 * their edges; how badly, by circles that fill them from inside. Sheets are filled piece by piece
 * ({@link punchwright.engine.nesting.shapes.SheetFill}): squares of a grid offer places, the edges decide. Regular patterns of one
 * piece: {@link punchwright.engine.nesting.shapes.Lattice}.
 *
 * <p>Measured by: published irregular strip-packing sets with their best known densities, densest known lattices, parts of real
 * drawings on sheets, and an independent check.
 */
package punchwright.engine.nesting.shapes;
