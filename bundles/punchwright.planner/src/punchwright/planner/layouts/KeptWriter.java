// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.Placement;
import punchwright.engine.planning.SheetLayouts;
import punchwright.model.shop.Library;
import punchwright.model.shop.Material;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.WorkFactory;

/** Layouts of the program as records that an order can keep. */
public final class KeptWriter {

    private final Library library;
    private final Set<String> taken = new TreeSet<>();

    /** {@code order} will keep what is written: identifiers are free there. */
    public KeptWriter(Library library, Order order) {
        this.library = library;
        order.getLayouts().forEach(l -> taken.add(l.getId()));
    }

    /** Every layout of a result, in order. The records stand in no order yet; nothing is locked. */
    public List<KeptLayout> write(OrderLayouts.Result result) {
        List<KeptLayout> kept = new ArrayList<>();
        for (SheetLayouts sheets : result.sheets()) {
            sheets.nesting().layouts().forEach(l -> kept.add(layout(result, sheets, l)));
        }
        return kept;
    }

    private KeptLayout layout(OrderLayouts.Result result, SheetLayouts sheets, Layout layout) {
        KeptLayout out = WorkFactory.eINSTANCE.createKeptLayout();
        out.setId(freeId());
        out.setMachine(result.machine());
        out.setMaterial(material(sheets.material().id()));
        out.setThicknessMm(sheets.thicknessMm());
        out.setStock(library.getStock().stream().filter(s -> s.getId().equals(layout.sheet().id())).findFirst().orElse(null));
        out.setRuns(layout.runs());
        out.setWebMm(webMm(sheets));
        layout.placements().forEach(p -> out.getPlacements().add(placement(result, p)));
        return out;
    }

    /** The web that the pieces keep, mm. */
    public static double webMm(SheetLayouts sheets) {
        return sheets.job().parts().stream().mapToDouble(p -> p.webMm()).max().orElse(0);
    }

    /** Whether two records hold the same parts at the same places of the same stock item. */
    public static boolean lieAlike(KeptLayout a, KeptLayout b) {
        if (a.getMachine() != b.getMachine() || a.getStock() != b.getStock()
                || a.getPlacements().size() != b.getPlacements().size()) {
            return false;
        }
        for (int i = 0; i < a.getPlacements().size(); i++) {
            KeptPlacement p = a.getPlacements().get(i);
            KeptPlacement q = b.getPlacements().get(i);
            if (p.getPart() != q.getPart() || p.getXMm() != q.getXMm() || p.getYMm() != q.getYMm()
                    || p.getAngleDeg() != q.getAngleDeg()) {
                return false;
            }
        }
        return true;
    }

    private Material material(String id) {
        return library.getMaterials().stream().filter(m -> m.getId().equals(id)).findFirst().orElse(null);
    }

    private static KeptPlacement placement(OrderLayouts.Result result, Placement p) {
        KeptPlacement out = WorkFactory.eINSTANCE.createKeptPlacement();
        out.setPart(result.parts().get(p.partId()));
        out.setXMm(p.pose().x());
        out.setYMm(p.pose().y());
        out.setAngleDeg(p.pose().angleDeg());
        return out;
    }

    /** An identifier that no layout of the order has. */
    public String freeId() {
        int number = 1;
        while (!taken.add("layout-" + number)) {
            number++;
        }
        return "layout-" + number;
    }
}
