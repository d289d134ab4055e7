// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.List;
import java.util.Locale;

import punchwright.model.shop.FormDirection;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.model.shop.ShearKind;
import punchwright.model.shop.ShopPackage.Literals;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolFamily;
import punchwright.model.shop.ToolShape;

/** Rules for the shape and size of a tool and of a holder. */
final class ToolRules {

    private ToolRules() {
    }

    static void addTo(Rules.Rows rows) {
        shape(rows);
        special(rows);
        die(rows);
        holder(rows);
    }

    private static void shape(Rules.Rows rows) {
        rows.error("PW-M-050", Tool.class, (t, r) -> {
            if (ToolSizes.needsWidth(t.getShape()) && t.getWidthMm() <= 0) {
                r.add(Literals.TOOL__WIDTH_MM, t.getShape());
            }
        });
        rows.error("PW-M-051", Tool.class, (t, r) -> {
            if (ToolSizes.needsWidth(t.getShape()) && t.getWidthMm() > t.getLengthMm()) {
                r.add(Literals.TOOL__WIDTH_MM, t.getWidthMm(), t.getLengthMm());
            }
        });
        rows.error("PW-M-052", Tool.class, (t, r) -> {
            double smaller = t.getWidthMm() > 0 ? Math.min(t.getWidthMm(), t.getLengthMm()) : t.getLengthMm();
            if (t.getCornerRadiusMm() > smaller / 2 && t.getShape() != ToolShape.CORNER_RADIUS) {
                r.add(Literals.TOOL__CORNER_RADIUS_MM, t.getCornerRadiusMm(), smaller / 2);
            }
        });
        rows.warning("PW-M-059", Tool.class, ToolRules::fitsSomewhere);
    }

    private static void special(Rules.Rows rows) {
        rows.error("PW-M-053", Tool.class, (t, r) -> {
            if (t.getShape() == ToolShape.CORNER_RADIUS && t.getCornerRadiusMm() <= 0) {
                r.add(Literals.TOOL__CORNER_RADIUS_MM);
            }
        });
        rows.error("PW-M-054", Tool.class, (t, r) -> {
            if (t.getShape() == ToolShape.CLUSTER && t.getPositions().size() < 2) {
                r.add(Literals.TOOL__POSITIONS, t.getPositions().size());
            }
        });
        rows.error("PW-M-055", Tool.class, (t, r) -> {
            if (t.getShape() == ToolShape.FREE_CONTOUR && !isDrawingPath(t.getContourDrawing())) {
                r.add(Literals.TOOL__CONTOUR_DRAWING, t.getContourDrawing() == null ? "" : t.getContourDrawing());
            }
        });
        rows.error("PW-M-056", Tool.class, (t, r) -> {
            boolean forms = ToolSizes.familyOf(t.getShape()) == ToolFamily.FORMING && t.getShape() != ToolShape.COUNTERSINK;
            if (forms && (t.getFormHeightMm() <= 0 || t.getFormDirection() == FormDirection.NONE)) {
                r.add(Literals.TOOL__FORM_HEIGHT_MM, t.getFormHeightMm());
            }
        });
        rows.warning("PW-M-057", Tool.class, (t, r) -> {
            if (ToolSizes.cuts(t.getShape()) && (t.getFormHeightMm() > 0 || t.getFormDirection() != FormDirection.NONE)) {
                r.add(Literals.TOOL__FORM_HEIGHT_MM, t.getFormHeightMm());
            }
        });
        rows.error("PW-M-058", Tool.class, (t, r) -> {
            if (t.getShearKind() == ShearKind.FLAT != (t.getShearAngleDeg() == 0)) {
                r.add(Literals.TOOL__SHEAR_ANGLE_DEG, t.getShearAngleDeg(), t.getShearKind());
            }
        });
    }

    /** Whether a text can be the path of a drawing inside the workspace. */
    static boolean isDrawingPath(String path) {
        return path != null && path.toLowerCase(Locale.ROOT).endsWith(".dxf") && !path.startsWith("/")
                && path.indexOf('\\') < 0 && path.indexOf(':') < 0 && !List.of(path.split("/")).contains("..");
    }

    private static void fitsSomewhere(Tool tool, Report report) {
        Library library = LibraryRules.libraryOf(tool);
        if (library == null || library.getMachines().isEmpty()) {
            return;
        }
        double size = ToolSizes.circumscribedMm(tool);
        boolean inPlace = library.getMachines().stream().flatMap(m -> m.getPlaces().stream()).anyMatch(
                p -> takes(p, ToolSizes.familyOf(tool.getShape())) && size <= p.getMaxToolDiameterMm());
        boolean inHolder = library.getHolders().stream().anyMatch(h -> size <= h.getLargestInsertDiameterMm());
        if (!inPlace && !inHolder) {
            report.add(Literals.TOOL__LENGTH_MM, size, largestPlace(library));
        }
    }

    static boolean takes(Place place, ToolFamily family) {
        return place.getAccepts().isEmpty() || place.getAccepts().contains(family);
    }

    private static double largestPlace(Library library) {
        return library.getMachines().stream().map(Machine::getPlaces).flatMap(List::stream)
                .mapToDouble(Place::getMaxToolDiameterMm)
                .max().orElse(0);
    }

    private static void die(Rules.Rows rows) {
        rows.warning("PW-M-060", Tool.class, (t, r) -> {
            if (ToolSizes.cuts(t.getShape()) && t.getDieClearancesMm().isEmpty()) {
                r.add(Literals.TOOL__DIE_CLEARANCES_MM);
            }
        });
        rows.error("PW-M-061", Tool.class, (t, r) -> {
            double before = 0;
            for (double clearance : t.getDieClearancesMm()) {
                if (clearance <= before) {
                    r.add(Literals.TOOL__DIE_CLEARANCES_MM, clearance, before);
                }
                before = Math.max(before, clearance);
            }
        });
    }

    private static void holder(Rules.Rows rows) {
        rows.error("PW-M-070", MultiToolHolder.class, ToolRules::insertsFitInside);
        rows.warning("PW-M-071", MultiToolHolder.class, (h, r) -> {
            Library library = LibraryRules.libraryOf(h);
            if (library != null && !library.getMachines().isEmpty()
                    && library.getMachines().stream().flatMap(m -> m.getPlaces().stream())
                            .noneMatch(p -> takes(p, ToolFamily.HOLDER) && h.getOuterDiameterMm() <= p.getMaxToolDiameterMm())) {
                r.add(Literals.MULTI_TOOL_HOLDER__OUTER_DIAMETER_MM, h.getOuterDiameterMm(), largestPlace(library));
            }
        });
    }

    /**
     * Equal circles of diameter d on a ring need an outer diameter d (1 + 1 / sin(pi / n)); from seven on, one may sit in the
     * middle.
     */
    private static void insertsFitInside(MultiToolHolder holder, Report report) {
        int onRing = holder.getInsertCount() >= 7 ? holder.getInsertCount() - 1 : holder.getInsertCount();
        if (onRing < 2) {
            return;
        }
        double need = holder.getLargestInsertDiameterMm() * (1 + 1 / Math.sin(Math.PI / onRing));
        if (need > holder.getOuterDiameterMm() * (1 + 1e-9)) {
            report.add(Literals.MULTI_TOOL_HOLDER__OUTER_DIAMETER_MM, holder.getInsertCount(),
                    holder.getLargestInsertDiameterMm(), need,
                    holder.getOuterDiameterMm());
        }
    }
}
