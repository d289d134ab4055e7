// SPDX-License-Identifier: EPL-2.0
/**
 * How long the purchase advice takes on a seeded order book of an invented shop.
 *
 * <p>Input: number of parts and a seed. Result: one line with additions, how many were worked out, choices made and processor
 * time.
 * The book: plates with round, rectangular and obround openings, some in rows, ten parts an order, 60 tools, one machine with 20
 * places that turn.
 */
package punchwright.benchmarks.advice;
