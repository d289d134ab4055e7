// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.HashSet;
import java.util.Set;

import punchwright.model.shop.FormDirection;
import punchwright.model.shop.Grain;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.Assembly;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.GrainDemand;
import punchwright.model.work.Item;
import punchwright.model.work.Part;
import punchwright.model.work.PartForm;
import punchwright.model.work.SecondaryWork;
import punchwright.model.work.WorkPackage.Literals;

/** Rules for parts and assemblies apart from their shapes. */
final class PartRules {

    private PartRules() {
    }

    static void addTo(Rules.Rows rows) {
        material(rows);
        forms(rows);
        assemblies(rows);
    }

    private static void material(Rules.Rows rows) {
        rows.warning("PW-M-100", Part.class, (p, r) -> {
            if (p.getMaterial() != null && !p.getMaterial().getThicknessesMm().isEmpty()
                    && !p.getMaterial().getThicknessesMm().contains(p.getThicknessMm())) {
                r.add(Literals.PART__THICKNESS_MM, p.getThicknessMm(), p.getMaterial());
            }
        });
        rows.warning("PW-M-101", Part.class, (p, r) -> {
            Library library = LibraryRules.libraryOf(p.getMaterial());
            if (library != null && library.getMachines().stream().filter(m -> m.getStatus() == ItemStatus.IN_USE)
                    .noneMatch(m -> p.getThicknessMm() >= m.getMinThicknessMm() && p.getThicknessMm() <= m.getMaxThicknessMm())) {
                r.add(Literals.PART__THICKNESS_MM, p.getThicknessMm());
            }
        });
        rows.warning("PW-M-102", Part.class, (p, r) -> {
            Library library = LibraryRules.libraryOf(p.getMaterial());
            if (library != null && library.getStock().stream()
                    .noneMatch(s -> s.getMaterial() == p.getMaterial() && s.getThicknessMm() == p.getThicknessMm())) {
                r.add(Literals.PART__MATERIAL, p.getMaterial(), p.getThicknessMm());
            }
        });
        rows.warning("PW-M-103", Part.class, (p, r) -> {
            Library library = LibraryRules.libraryOf(p.getMaterial());
            if (library != null && p.getGrain() != GrainDemand.ANY && library.getStock().stream().noneMatch(
                    s -> s.getMaterial() == p.getMaterial() && s.getThicknessMm() == p.getThicknessMm()
                    && s.getGrain() != Grain.UNKNOWN)) {
                r.add(Literals.PART__GRAIN, p.getMaterial(), p.getThicknessMm());
            }
        });
        rows.warning("PW-M-104", Item.class, (i, r) -> {
            if (MaterialRules.isBlank(i.getNumber())) {
                r.add(Literals.ITEM__NUMBER);
            }
        });
    }

    private static void forms(Rules.Rows rows) {
        rows.error("PW-M-105", PartForm.class, (f, r) -> {
            if (ToolSizes.cuts(f.getKind())) {
                r.add(Literals.PART_FORM__KIND, f.getKind());
            }
        });
        rows.error("PW-M-106", PartForm.class, (f, r) -> {
            boolean stands = !ToolSizes.cuts(f.getKind()) && f.getKind() != ToolShape.MARKING
                    && f.getKind() != ToolShape.COUNTERSINK;
            if (stands && (f.getHeightMm() == 0 || f.getDirection() == FormDirection.NONE)) {
                r.add(Literals.PART_FORM__HEIGHT_MM, f.getHeightMm());
            }
        });
        rows.error("PW-M-107", PartForm.class, (f, r) -> {
            if (f.getKind() == ToolShape.COLLAR && f.getCoreHoleMm() >= f.getLengthMm() && f.getCoreHoleMm() > 0) {
                r.add(Literals.PART_FORM__CORE_HOLE_MM, f.getCoreHoleMm(), f.getLengthMm());
            }
        });
        rows.warning("PW-M-108", SecondaryWork.class, (w, r) -> {
            if (w.getRate() != null && w.getMinutesPerPiece() == 0 && w.getRate().getMinutesPerPiece() == 0
                    && w.getUnits() * w.getRate().getMinutesPerUnit() == 0) {
                r.add(Literals.SECONDARY_WORK__MINUTES_PER_PIECE, w.getRate());
            }
        });
    }

    private static void assemblies(Rules.Rows rows) {
        rows.error("PW-M-120", Assembly.class, (a, r) -> {
            if (a.getItems().isEmpty()) {
                r.add(Literals.ASSEMBLY__ITEMS);
            }
        });
        rows.error("PW-M-121", Assembly.class, (a, r) -> {
            if (reaches(a, a, new HashSet<>())) {
                r.add(Literals.ASSEMBLY__ITEMS);
            }
        });
    }

    private static boolean reaches(Assembly from, Assembly wanted, Set<Assembly> seen) {
        for (AssemblyItem line : from.getItems()) {
            if (line.getItem() instanceof Assembly inside
                    && (inside == wanted || seen.add(inside) && reaches(inside, wanted, seen))) {
                return true;
            }
        }
        return false;
    }
}
