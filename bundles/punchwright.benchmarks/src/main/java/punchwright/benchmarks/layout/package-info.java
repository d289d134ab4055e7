// SPDX-License-Identifier: EPL-2.0
/** The layout search on published packing instances: one JSON line an instance, a table at the end. */
package punchwright.benchmarks.layout;
