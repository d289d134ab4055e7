// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** The longest (mm), widest (mm) and heaviest (kg) sheet that the machine takes. */
public record SheetLimits(double maxLengthMm, double maxWidthMm, double maxMassKg) {
}
