// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

/** A piece on a sheet: number of its kind, number of its turn, and its reference point from the sheet's lower left corner. */
public record Laid(int kind, int turn, double x, double y) {
}
