// SPDX-License-Identifier: EPL-2.0
/**
 * Layout of parts on sheets.
 *
 * <p>Purpose: material is the largest share of a punched part's cost; this stage decides which part lies where on which
 * stock sheet. Input: {@link punchwright.engine.nesting.NestingJob}. Result: {@link punchwright.engine.nesting.Nesting},
 * layouts with run counts, utilisation, a lower bound and findings. Entry: {@link punchwright.engine.nesting.Nester}.
 *
 * <p>Algorithm: parts are taken as their bounding boxes at the angles that grain and visible face allow. One part alone
 * goes into nested blocks of its two orientations and the cheapest mix of sheets follows from an exact cover of the
 * quantity; several parts go through maximal free rectangles under many orders and fit rules, sheet after sheet, each
 * filled sheet repeated while the quantities allow; then sheets are saved by a search over bins ({@code boxes}). Where the
 * job asks for true shapes, interlocked patterns and gaps between parts are tried as well ({@code shapes}). The cheapest
 * proposal wins. Boxes are integers of 0.1 micrometre, so
 * that a sum of sizes never depends on rounding.
 *
 * <p>Measured by: published grid counts, perfect packings of known optimum, exact one-dimensional cases, and an
 * independent geometric check of seeded random orders.
 */
package punchwright.engine.nesting;
