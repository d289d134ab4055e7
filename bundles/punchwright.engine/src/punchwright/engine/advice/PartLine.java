// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

/**
 * One part of an order on one machine, for one run of the order.
 *
 * @param part         number of the part in the order
 * @param choice       its choice of tools
 * @param made         whether it can be made, its tools finding places together with those of its sheet
 * @param cost         currency a run: the choice's cost at the machine's rate and changes that differ from the usual one
 * @param pressSeconds press time of the hits, s a run
 * @param wear         currency a run
 */
record PartLine(int part, PartChoice choice, boolean made, double cost, double pressSeconds, double wear) {
}
