// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/**
 * One part of an order whose tools are chosen together with those of the others.
 *
 * @param job       features, material, machine and tools; machine, tools, holders and rules are the same for all parts
 * @param wishes    what the engineer wants for this part
 * @param pieces    pieces of the lot, at least 1
 * @param turnedDeg how the part is turned on the sheet where it lies in one direction only, degrees
 */
public record OrderPart(ToolingJob job, ToolWishes wishes, int pieces, double turnedDeg) {
}
