// SPDX-License-Identifier: EPL-2.0
/**
 * The independent judge of layouts.
 *
 * <p>Purpose: no layout goes to the machine on the word of the code that made it, and a layout that a person has changed is
 * judged by the same rules. Input: {@link punchwright.engine.nesting.NestingJob} with a layout or a whole nesting. Result:
 * findings with typed reasons, values and the place on the sheet; none when everything holds. Entry:
 * {@link punchwright.engine.nesting.check.LayoutCheck}.
 *
 * <p>Algorithm: true shapes as JTS polygons with chords of at most 0.0005 mm, neighbours by an index tree, distances between
 * polygons. It shares records with the placing and no code: it would be worth nothing otherwise. Lengths hold to 0.001 mm.
 *
 * <p>Measured by: each kind of damage done to a good layout is seen, and its silence over seeded random orders.
 */
package punchwright.engine.nesting.check;
