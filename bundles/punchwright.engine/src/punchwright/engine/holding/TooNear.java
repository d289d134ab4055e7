// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

/**
 * A hit that comes too near to a form if the form stands already.
 *
 * @param form     hit that makes the form
 * @param later    hit that comes after it
 * @param gapMm    edge of the form to the edge of the later hit, or to its axis where the tool's body is what strikes
 * @param leastMm  what the rule asks for, measured alike
 */
public record TooNear(SheetHit form, SheetHit later, double gapMm, double leastMm) {
}
