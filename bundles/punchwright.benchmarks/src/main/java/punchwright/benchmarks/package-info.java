// SPDX-License-Identifier: EPL-2.0
/** Measures how long the engine takes; not part of the tests, started by hand. */
package punchwright.benchmarks;
