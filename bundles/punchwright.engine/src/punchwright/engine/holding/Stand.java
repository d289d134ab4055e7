// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

/** One carriage position: side of the sheet (0 as loaded, 1 turned) and the sheet x at the carriage's zero, mm. */
record Stand(int side, double zero) {
}
