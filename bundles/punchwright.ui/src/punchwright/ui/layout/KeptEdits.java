// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;

import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;
import punchwright.model.work.WorkPackage.Literals;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.Piece;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;

/** Changes of an order's kept layouts, each one step of undo. To be used on the UI thread. */
final class KeptEdits {

    private final OpenFile file;
    private final Order order;

    KeptEdits(OpenFile file, Order order) {
        this.file = file;
        this.order = order;
    }

    /** Makes a record lie as a sheet is arranged; says whether something changed. */
    boolean arrange(String label, KeptLayout kept, ArrangedSheet sheet) {
        CompoundCommand command = new CompoundCommand(label);
        if (sameParts(kept, sheet)) {
            for (int i = 0; i < sheet.pieces().size(); i++) {
                place(command, kept.getPlacements().get(i), sheet.pieces().get(i));
            }
        } else {
            List<KeptPlacement> placements = sheet.pieces().stream().map(KeptEdits::placement).toList();
            command.append(SetCommand.create(file.domain(), kept, Literals.KEPT_LAYOUT__PLACEMENTS, new ArrayList<>(placements)));
        }
        return run(command);
    }

    private static boolean sameParts(KeptLayout kept, ArrangedSheet sheet) {
        if (kept.getPlacements().size() != sheet.pieces().size()) {
            return false;
        }
        for (int i = 0; i < sheet.pieces().size(); i++) {
            Part part = kept.getPlacements().get(i).getPart();
            if (part == null || !sheet.pieces().get(i).partId().equals(part.getId())) {
                return false;
            }
        }
        return true;
    }

    private void place(CompoundCommand command, KeptPlacement p, Piece piece) {
        set(command, p, Literals.KEPT_PLACEMENT__XMM, p.getXMm(), piece.xMm());
        set(command, p, Literals.KEPT_PLACEMENT__YMM, p.getYMm(), piece.yMm());
        set(command, p, Literals.KEPT_PLACEMENT__ANGLE_DEG, p.getAngleDeg(), piece.angleDeg());
        set(command, p, Literals.KEPT_PLACEMENT__LOCKED, p.isLocked(), piece.locked());
    }

    private void set(CompoundCommand command, EObject owner, EStructuralFeature feature, Object before, Object now) {
        if (!Objects.equals(before, now)) {
            command.append(SetCommand.create(file.domain(), owner, feature, now));
        }
    }

    private static KeptPlacement placement(Piece piece) {
        KeptPlacement p = WorkFactory.eINSTANCE.createKeptPlacement();
        p.setPart(part(piece.partId()));
        p.setXMm(piece.xMm());
        p.setYMm(piece.yMm());
        p.setAngleDeg(piece.angleDeg());
        p.setLocked(piece.locked());
        return p;
    }

    /** The part of an id: of the workspace, whether ordered or not. */
    static Part part(String id) {
        return Session.current().orElseThrow().workspace().parts().stream().filter(p -> id.equals(p.getId())).findFirst()
                .orElse(null);
    }

    /** Sets one value of a layout. */
    boolean set(String label, KeptLayout kept, EStructuralFeature feature, Object value) {
        CompoundCommand command = new CompoundCommand(label);
        set(command, kept, feature, kept.eGet(feature), value);
        return run(command);
    }

    /** Puts layouts in the place of others. */
    boolean replace(String label, List<KeptLayout> gone, List<KeptLayout> made) {
        CompoundCommand command = new CompoundCommand(label);
        if (!gone.isEmpty()) {
            command.append(RemoveCommand.create(file.domain(), order, Literals.ORDER__LAYOUTS, gone));
        }
        if (!made.isEmpty()) {
            command.append(AddCommand.create(file.domain(), order, Literals.ORDER__LAYOUTS, made));
        }
        return run(command);
    }

    private boolean run(CompoundCommand command) {
        return !command.isEmpty() && file.run(command);
    }
}
