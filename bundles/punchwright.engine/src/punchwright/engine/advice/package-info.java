// SPDX-License-Identifier: EPL-2.0
/**
 * Which tool, holder or machine option to buy.
 *
 * <p>Input: the order book with yearly quantities, machines with rates, tools and holders owned
 * ({@link punchwright.engine.advice.AdviceJob}). Result: additions ranked by what they save in a year, with payback and what
 * they make possible ({@link punchwright.engine.advice.Advice}). Entry: {@link punchwright.engine.advice.Advisor#advise}.
 * Algorithm: the search space is made from every size in the order book's features ({@code Additions}); the cost of the book is
 * the choice of tools of every part, and each order is made on its cheapest machine ({@code BookCost}); an addition is worked
 * out by choosing again for the parts it touches, everything else is remembered; a bound on what it can save at most, proven
 * from the alternatives of today's choice ({@code SavingBound}), goes before, so that most are never worked out. Why not a
 * ready solver: the choice itself is the model. Measured by: the same ranking as brute force without bound and memory on seeded
 * small order books; payback against published worked examples.
 */
package punchwright.engine.advice;
