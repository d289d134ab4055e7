// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.List;

/**
 * The press with its frame, axes, clamps, head and rates. Lengths mm, forces N, mass kg.
 *
 * @param id                stable id
 * @param name              what the shop calls it
 * @param throatDepthMm     clear depth from the tool axis to the frame: the largest sheet width
 * @param travelXMm         travel of the carriage along the sheet between two repositions
 * @param travelYMm         travel across the sheet
 * @param xAxis             limits along the sheet
 * @param yAxis             limits across the sheet
 * @param longestSheetMm    longest sheet with repositioning
 * @param minThicknessMm    thinnest sheet
 * @param maxThicknessMm    thickest sheet
 * @param maxSheetMassKg    heaviest sheet
 * @param pressForceN       largest punching force of the press
 * @param headKind          how tools come under the ram
 * @param places            in order
 * @param clamps            clamps along the edge
 * @param times             fixed times
 * @param dropOpeningMm     largest side of a slug or part that falls through the table by itself
 * @param accuracyMm        positioning accuracy, plus or minus
 * @param options           equipment
 * @param formClearance     room for forms that stand
 */
public record Machine(String id, String name, double throatDepthMm, double travelXMm, double travelYMm, Axis xAxis,
        Axis yAxis, double longestSheetMm, double minThicknessMm, double maxThicknessMm, double maxSheetMassKg,
        double pressForceN, HeadKind headKind, List<Place> places, Clamps clamps, Times times, double dropOpeningMm,
        double accuracyMm, MachineOptions options, FormClearance formClearance) {

    public Machine {
        places = List.copyOf(places);
    }

    /** A machine whose record says nothing of forms. */
    public Machine(String id, String name, double throatDepthMm, double travelXMm, double travelYMm, Axis xAxis, Axis yAxis,
            double longestSheetMm, double minThicknessMm, double maxThicknessMm, double maxSheetMassKg, double pressForceN,
            HeadKind headKind, List<Place> places, Clamps clamps, Times times, double dropOpeningMm, double accuracyMm,
            MachineOptions options) {
        this(id, name, throatDepthMm, travelXMm, travelYMm, xAxis, yAxis, longestSheetMm, minThicknessMm, maxThicknessMm,
                maxSheetMassKg, pressForceN, headKind, places, clamps, times, dropOpeningMm, accuracyMm, options,
                FormClearance.NOT_GIVEN);
    }

    /** A machine without equipment. */
    public Machine(String id, String name, double throatDepthMm, double travelXMm, double travelYMm, Axis xAxis, Axis yAxis,
            double longestSheetMm, double minThicknessMm, double maxThicknessMm, double maxSheetMassKg, double pressForceN,
            HeadKind headKind, List<Place> places, Clamps clamps, Times times, double dropOpeningMm, double accuracyMm) {
        this(id, name, throatDepthMm, travelXMm, travelYMm, xAxis, yAxis, longestSheetMm, minThicknessMm, maxThicknessMm,
                maxSheetMassKg, pressForceN, headKind, places, clamps, times, dropOpeningMm, accuracyMm, MachineOptions.NONE);
    }
}
