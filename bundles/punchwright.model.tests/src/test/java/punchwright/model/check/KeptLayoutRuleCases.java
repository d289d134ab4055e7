// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import punchwright.model.Samples;
import punchwright.model.shop.Material;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Part;
import punchwright.model.work.Want;

/** The cases of the rules on layouts that the engineer arranged; see {@link RuleCases}. */
final class KeptLayoutRuleCases {

    private static final int ORDERED = 50;

    private KeptLayoutRuleCases() {
    }

    static void add() {
        RuleCases.rule("135", (w, bad) -> kept(w).getStock().setThicknessMm(bad ? 2 : 1.5));
        RuleCases.rule("136", (w, bad) -> {
            Material other = Samples.material();
            other.setId("other");
            w.library.getMaterials().add(other);
            KeptLayout layout = kept(w);
            if (bad) {
                w.part.setMaterial(other);
            }
            layout.setRuns(1);
        });
        RuleCases.rule("137", (w, bad) -> kept(w).setRuns(bad ? ORDERED + 1 : ORDERED));
        RuleCases.rule("138", (w, bad) -> {
            Part other = Samples.part(w.library);
            other.setId("other-part");
            w.part.eResource().getContents().add(other);
            kept(w).getPlacements().get(0).setPart(bad ? other : w.part);
        });
        RuleCases.rule("139", (w, bad) -> w.order.getLines().get(0).setWant(bad ? Want.FILLER : Want.MAY));
        RuleCases.rule("155", (w, bad) -> {
            w.machine().setLongestSheetMm(4000);
            kept(w).getStock().setLengthMm(bad ? 4001 : 4000);
        });
        RuleCases.rule("156", (w, bad) -> {
            KeptLayout layout = kept(w);
            layout.getStock().setOrderable(false);
            layout.getStock().setQuantity(3);
            layout.setRuns(bad ? 4 : 3);
        });
        RuleCases.rule("157", (w, bad) -> {
            KeptLayout layout = kept(w);
            if (bad) {
                layout.getPlacements().clear();
            }
        });
    }

    private static KeptLayout kept(World w) {
        KeptLayout layout = Samples.WORK.createKeptLayout();
        layout.setId("k-1");
        layout.setMachine(w.machine());
        layout.setMaterial(w.part.getMaterial());
        layout.setThicknessMm(w.part.getThicknessMm());
        layout.setStock(w.stock());
        KeptPlacement placement = Samples.WORK.createKeptPlacement();
        placement.setPart(w.part);
        layout.getPlacements().add(placement);
        w.order.getLayouts().add(layout);
        return layout;
    }
}
