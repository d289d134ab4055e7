// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Fixed times of a machine, in s unless said.
 *
 * @param settlingS            rest after a move before a single hit
 * @param strokeS              ram down and up for a single hit
 * @param nibblingPerMin       stroke rate when nibbling, hits per minute, at a pitch up to nibblingMaxPitchMm
 * @param nibblingMaxPitchMm   largest pitch at which the nibbling rate holds
 * @param toolChangeS          automatic change (turret index or magazine)
 * @param handChangeS          change by hand, where a tool has no place
 * @param insertChangeS        next insert of a multi-tool
 * @param turnDegPerS          speed of turning a tool, degrees per s
 * @param repositionS          hold the sheet down, open, travel, close
 * @param turnOverS            turn the sheet and clamp it on the other edge
 * @param loadS                load and square a sheet
 * @param unloadS              unload the finished sheet
 * @param partRemovalS         take one separated part away
 */
public record Times(double settlingS, double strokeS, double nibblingPerMin, double nibblingMaxPitchMm, double toolChangeS,
        double handChangeS, double insertChangeS, double turnDegPerS, double repositionS, double turnOverS, double loadS,
        double unloadS, double partRemovalS) {
}
