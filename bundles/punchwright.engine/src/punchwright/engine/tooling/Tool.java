// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.MaterialGroup;

/**
 * Punch, die and stripper of one shape.
 *
 * @param id                    stable id
 * @param name                  what the shop calls it
 * @param shape                 shape of the punch
 * @param lengthMm              diameter, longer side or across flats, as in {@code Feature.lengthMm}
 * @param widthMm               shorter side; the height over the flat or flats; equals the length with one size
 * @param cornerRadiusMm        corner radius; 0 where sharp
 * @param freedom               how it may be set about its axis
 * @param fixedAngleDeg         its set angle where not free
 * @param clearancesTotalMm     total die clearances on hand, mm, ascending
 * @param shear                 how the face is ground
 * @param shearHeightMm         height of the roof or slope
 * @param price                 new price in the library's currency
 * @param grindsLeft            grinds that remain
 * @param grindCost             cost of one grind
 * @param hitsPerGrind          hits between grinds by material group
 * @param hitsSinceGrind        hits made since the last grind
 * @param onHand                number owned
 * @param formHeightMm          height of a form, positive up, negative down; 0 for cutting tools
 * @param cluster               centres of the single punches of a cluster about the tool axis; empty otherwise
 * @param freeContour           punch contour of a free-contour tool about the tool axis; null otherwise
 * @param room                  room around its hit, and how often and over what it forms
 */
public record Tool(String id, String name, ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm,
        AngleFreedom freedom, double fixedAngleDeg, List<Double> clearancesTotalMm, ShearKind shear, double shearHeightMm,
        double price, int grindsLeft, double grindCost, Map<MaterialGroup, Integer> hitsPerGrind, long hitsSinceGrind,
        int onHand, double formHeightMm, List<Point> cluster, Contour freeContour, ToolRoom room) {

    public Tool {
        clearancesTotalMm = List.copyOf(clearancesTotalMm);
        hitsPerGrind = Collections.unmodifiableMap(new TreeMap<>(hitsPerGrind));
        cluster = List.copyOf(cluster);
    }

    /** A tool whose record says nothing of the room around it. */
    public Tool(String id, String name, ToolShape shape, double lengthMm, double widthMm, double cornerRadiusMm,
            AngleFreedom freedom, double fixedAngleDeg, List<Double> clearancesTotalMm, ShearKind shear, double shearHeightMm,
            double price, int grindsLeft, double grindCost, Map<MaterialGroup, Integer> hitsPerGrind, long hitsSinceGrind,
            int onHand, double formHeightMm, List<Point> cluster, Contour freeContour) {
        this(id, name, shape, lengthMm, widthMm, cornerRadiusMm, freedom, fixedAngleDeg, clearancesTotalMm, shear, shearHeightMm,
                price, grindsLeft, grindCost, hitsPerGrind, hitsSinceGrind, onHand, formHeightMm, cluster, freeContour,
                ToolRoom.NONE);
    }

    /** How far what it makes stands over the sheet, mm, up positive: 0 for cuts, marks and countersinks, which stand nowhere. */
    public double standsMm() {
        return shape == ToolShape.COUNTERSINK || shape == ToolShape.MARKING || !shape.forms() ? 0 : formHeightMm;
    }
}
