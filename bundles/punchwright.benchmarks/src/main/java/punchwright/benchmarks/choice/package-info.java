// SPDX-License-Identifier: EPL-2.0
/**
 * Benchmark of the choice of tools: seeded parts and orders, ours whole and, with {@code --solvers}, its arithmetic by three
 * libraries of Maven Central and by the branch and bound used before. The libraries are here to be compared with; only ojAlgo is
 * shipped.
 */
package punchwright.benchmarks.choice;
