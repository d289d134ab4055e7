// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.work.BusbarShape;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.FlangeShape;
import punchwright.model.work.HolePattern;
import punchwright.model.work.HoleShape;
import punchwright.model.work.NotchedBracketShape;
import punchwright.model.work.Part;
import punchwright.model.work.PerforatedPanelShape;
import punchwright.model.work.PlateShape;
import punchwright.model.work.RackPanelShape;
import punchwright.model.work.WorkPackage.Literals;

/** Rules for the shapes of parts that are given by numbers. */
final class ShapeRules {

    /**
     * Front panels of racks [IEC 60297-3-100 and EIA-310, from memory]: width, one unit, and what a panel is lower than its
     * units.
     */
    private static final double RACK_WIDTH_MM = 482.6;
    private static final double RACK_UNIT_MM = 44.45;
    private static final double RACK_GAP_MM = 0.8;

    private ShapeRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-109", DrawnShape.class, (s, r) -> {
            if (!ToolRules.isDrawingPath(s.getDrawing())) {
                r.add(Literals.DRAWN_SHAPE__DRAWING, s.getDrawing() == null ? "" : s.getDrawing());
            }
        });
        rows.error("PW-M-110", PlateShape.class, (s, r) -> {
            double half = Math.min(s.getLengthMm(), s.getWidthMm()) / 2;
            if (s.getCornerRadiusMm() > half) {
                r.add(Literals.PLATE_SHAPE__CORNER_RADIUS_MM, s.getCornerRadiusMm(), half);
            }
        });
        flange(rows);
        rows.error("PW-M-113", PerforatedPanelShape.class, (s, r) -> {
            if (s.getPitchMm() <= s.getHoleSizeMm()) {
                r.add(Literals.PERFORATED_PANEL_SHAPE__PITCH_MM, s.getPitchMm(), s.getHoleSizeMm());
            }
        });
        rows.error("PW-M-114", PerforatedPanelShape.class, (s, r) -> {
            double fieldX = s.getLengthMm() - 2 * s.getMarginXMm();
            double fieldY = s.getWidthMm() - 2 * s.getMarginYMm();
            if (Math.min(fieldX, fieldY) < s.getHoleSizeMm()) {
                r.add(Literals.PERFORATED_PANEL_SHAPE__MARGIN_XMM, fieldX, fieldY, s.getHoleSizeMm());
            }
        });
        rows.error("PW-M-115", NotchedBracketShape.class, (s, r) -> {
            if (2 * s.getNotchXMm() >= s.getLengthMm() || 2 * s.getNotchYMm() >= s.getWidthMm()) {
                r.add(Literals.NOTCHED_BRACKET_SHAPE__NOTCH_XMM, s.getNotchXMm(), s.getNotchYMm(), s.getLengthMm(),
                        s.getWidthMm());
            }
        });
        holes(rows);
    }

    private static void flange(Rules.Rows rows) {
        rows.error("PW-M-111", FlangeShape.class, (s, r) -> {
            double inner = s.getBoltCount() == 0 ? 0 : s.getBoltCircleDiameterMm() - s.getBoltHoleDiameterMm();
            double outer = s.getBoltCount() == 0 ? 0 : s.getBoltCircleDiameterMm() + s.getBoltHoleDiameterMm();
            boolean boltsBad = s.getBoltCount() > 0 && (inner <= s.getBoreDiameterMm() || outer >= s.getOuterDiameterMm());
            if (boltsBad || s.getBoreDiameterMm() >= s.getOuterDiameterMm()) {
                r.add(Literals.FLANGE_SHAPE__BOLT_CIRCLE_DIAMETER_MM, s.getBoltCircleDiameterMm(), s.getBoreDiameterMm(),
                        s.getOuterDiameterMm());
            }
        });
        rows.error("PW-M-112", FlangeShape.class, (s, r) -> {
            if (s.getBoltCount() < 2) {
                return;
            }
            double chord = s.getBoltCircleDiameterMm() * Math.sin(Math.PI / s.getBoltCount());
            if (chord <= s.getBoltHoleDiameterMm()) {
                r.add(Literals.FLANGE_SHAPE__BOLT_COUNT, s.getBoltCount(), chord, s.getBoltHoleDiameterMm());
            }
        });
    }

    private static void holes(Rules.Rows rows) {
        rows.error("PW-M-116", HolePattern.class, (h, r) -> {
            boolean overlapX = h.getCountX() > 1 && Math.abs(h.getPitchXMm()) <= smallestMm(h);
            boolean overlapY = h.getCountY() > 1 && Math.abs(h.getPitchYMm()) <= smallestMm(h);
            if (overlapX || overlapY) {
                r.add(Literals.HOLE_PATTERN__PITCH_XMM, h.getPitchXMm(), h.getPitchYMm(), smallestMm(h));
            }
        });
        rows.error("PW-M-117", HolePattern.class, ShapeRules::holesInside);
        rows.warning("PW-M-118", HolePattern.class, (h, r) -> {
            Part part = partOf(h);
            if (part == null || part.getMaterial() == null) {
                return;
            }
            double least = part.getMaterial().getMinimumHoleFactor() * part.getThicknessMm();
            if (smallestMm(h) > 0 && smallestMm(h) < least) {
                r.add(Literals.HOLE_PATTERN__SIZE_MM, smallestMm(h), least, part.getMaterial());
            }
        });
        rows.error("PW-M-119", HolePattern.class, (h, r) -> {
            boolean needs = h.getShape() == HoleShape.RECTANGLE || h.getShape() == HoleShape.OBROUND;
            if (needs && (h.getWidthMm() <= 0 || h.getShape() == HoleShape.OBROUND && h.getWidthMm() > h.getSizeMm())) {
                r.add(Literals.HOLE_PATTERN__WIDTH_MM, h.getShape(), h.getWidthMm(), h.getSizeMm());
            }
        });
    }

    private static double smallestMm(HolePattern holes) {
        return holes.getWidthMm() > 0 ? Math.min(holes.getWidthMm(), holes.getSizeMm()) : holes.getSizeMm();
    }

    /** Every hole's inscribed circle lies inside the uncut blank; the exact contour is the engine's business. */
    private static void holesInside(HolePattern holes, Report report) {
        double[] size = blankOf(holes.eContainer());
        if (size == null) {
            return;
        }
        double radius = smallestMm(holes) / 2;
        double lastX = holes.getXMm() + (holes.getCountX() - 1) * holes.getPitchXMm();
        double lastY = holes.getYMm() + (holes.getCountY() - 1) * holes.getPitchYMm();
        boolean inside = Math.min(holes.getXMm(), lastX) - radius > 0 && Math.max(holes.getXMm(), lastX) + radius < size[0]
                && Math.min(holes.getYMm(), lastY) - radius > 0 && Math.max(holes.getYMm(), lastY) + radius < size[1];
        if (!inside) {
            report.add(Literals.HOLE_PATTERN__XMM, holes.getXMm(), holes.getYMm(), lastX, lastY, size[0], size[1]);
        }
    }

    private static double[] blankOf(EObject shape) {
        return switch (shape) {
            case PlateShape p -> new double[] {p.getLengthMm(), p.getWidthMm()};
            case NotchedBracketShape n -> new double[] {n.getLengthMm(), n.getWidthMm()};
            case BusbarShape b -> new double[] {b.getLengthMm(), b.getWidthMm()};
            case RackPanelShape p -> new double[] {RACK_WIDTH_MM, p.getHeightUnits() * RACK_UNIT_MM - RACK_GAP_MM};
            case null, default -> null;
        };
    }

    private static Part partOf(HolePattern holes) {
        return holes.eContainer() != null && holes.eContainer().eContainer() instanceof Part part ? part : null;
    }
}
