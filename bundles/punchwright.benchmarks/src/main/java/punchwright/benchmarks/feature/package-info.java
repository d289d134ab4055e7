// SPDX-License-Identifier: EPL-2.0
/** Recognition of generated parts in numbers, held against what was drawn, and its speed on large fields. */
package punchwright.benchmarks.feature;
