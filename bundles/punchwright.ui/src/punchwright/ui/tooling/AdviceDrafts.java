// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import punchwright.engine.advice.Addition;
import punchwright.engine.advice.AdditionKind;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.tooling.Holder;
import punchwright.model.shop.AngleFreedom;
import punchwright.model.shop.FormDirection;
import punchwright.model.shop.GroupLife;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.ShearKind;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.ShopPackage;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.ui.form.Edits;
import punchwright.ui.session.OpenFile;
import punchwright.ui.text.Texts;

/** Records of the library for what the advice proposes: on order, none on hand, so that no plan uses them yet. */
public final class AdviceDrafts {

    private static final double N_PER_KN = 1000;
    private static final ShopFactory SHOP = ShopFactory.eINSTANCE;

    private AdviceDrafts() {
    }

    /** Whether it would be a record of its own: a tool or a holder that is not owned. */
    public static boolean isRecord(Addition addition) {
        return addition.kind() == AdditionKind.TOOL && addition.tool().freeContour() == null
                || addition.kind() == AdditionKind.HOLDER;
    }

    /** Adds the record as one step of undo; returns it, or null when it is no record of its own. */
    public static EObject add(OpenFile file, Library library, Addition addition) {
        EObject record = record(addition);
        if (record == null) {
            return null;
        }
        EReference list = record instanceof Tool ? ShopPackage.Literals.LIBRARY__TOOLS : ShopPackage.Literals.LIBRARY__HOLDERS;
        return new Edits(file).add(library, list, record) ? record : null;
    }

    /** The record that stands in no library; also for pictures. Null for what is no record of its own. */
    static EObject record(Addition addition) {
        if (!isRecord(addition)) {
            return null;
        }
        return addition.kind() == AdditionKind.HOLDER ? holder(addition) : tool(addition);
    }

    private static Tool tool(Addition addition) {
        punchwright.engine.tooling.Tool t = addition.tool();
        Tool tool = SHOP.createTool();
        tool.setId(addition.id());
        tool.setName(addition.name());
        tool.setNotes(Texts.of("advice.note", addition.why(), addition.price().how()));
        tool.setStatus(ItemStatus.ON_ORDER);
        tool.setShape(ToolShape.getByName(t.shape().name()));
        tool.setLengthMm(t.lengthMm());
        tool.setWidthMm(Math.abs(t.widthMm() - t.lengthMm()) < 1e-9 ? 0 : t.widthMm());
        tool.setCornerRadiusMm(t.cornerRadiusMm());
        tool.setAngleFreedom(AngleFreedom.getByName(t.freedom().name()));
        tool.setFixedAngleDeg(t.fixedAngleDeg());
        tool.getDieClearancesMm().addAll(t.clearancesTotalMm());
        shear(t, tool);
        tool.setFormHeightMm(Math.abs(t.formHeightMm()));
        tool.setFormDirection(t.formHeightMm() > 0 ? FormDirection.UP : t.formHeightMm() < 0 ? FormDirection.DOWN
                : FormDirection.NONE);
        t.cluster().forEach(p -> {
            var at = SHOP.createClusterPosition();
            at.setXMm(p.x());
            at.setYMm(p.y());
            tool.getPositions().add(at);
        });
        price(addition, t, tool);
        return tool;
    }

    private static void shear(punchwright.engine.tooling.Tool t, Tool tool) {
        tool.setShearKind(ShearKind.getByName(t.shear().name()));
        double run = tool.getShearKind() == ShearKind.ROOF ? t.lengthMm() / 2 : t.lengthMm();
        tool.setShearAngleDeg(run <= 0 ? 0 : Math.toDegrees(Math.atan(t.shearHeightMm() / run)));
    }

    private static void price(Addition addition, punchwright.engine.tooling.Tool t, Tool tool) {
        tool.setPrice(addition.price().value());
        tool.setGrindsLeft(t.grindsLeft());
        tool.setGrindCost(t.grindCost());
        for (Map.Entry<MaterialGroup, Integer> e : t.hitsPerGrind().entrySet()) {
            GroupLife life = SHOP.createGroupLife();
            life.setGroup(punchwright.model.shop.MaterialGroup.getByName(e.getKey().name()));
            life.setHitsPerGrind(e.getValue());
            tool.getLives().add(life);
        }
        tool.setOnHand(0);
    }

    private static MultiToolHolder holder(Addition addition) {
        Holder h = addition.holder();
        MultiToolHolder holder = SHOP.createMultiToolHolder();
        holder.setId(addition.id());
        holder.setName(addition.name());
        holder.setNotes(Texts.of("advice.note", addition.why(), addition.price().how()));
        holder.setStatus(ItemStatus.ON_ORDER);
        holder.setInsertCount(h.inserts());
        holder.setLargestInsertDiameterMm(h.maxInsertDiameterMm());
        holder.setForceLimitKn(h.forceLimitN() / N_PER_KN);
        holder.setInsertsTurn(h.insertsTurn());
        holder.setOuterDiameterMm(h.outerDiameterMm());
        holder.setPrice(addition.price().value());
        holder.setOnHand(0);
        return holder;
    }
}
