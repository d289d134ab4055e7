// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.planning.StockGroup;
import punchwright.engine.press.Machine;
import punchwright.model.shop.ChangeKind;
import punchwright.model.shop.ChangeTime;
import punchwright.model.shop.HeadKind;
import punchwright.model.shop.Material;
import punchwright.model.shop.Place;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.ToolFamily;

/** Machine and stock records: units, and what stands for "not given". */
class RecordReadersTest {

    private static final ShopFactory SHOP = ShopFactory.eINSTANCE;

    private static punchwright.model.shop.Machine machine(HeadKind head) {
        punchwright.model.shop.Machine m = SHOP.createMachine();
        m.setId("m");
        m.setHeadKind(head);
        m.setPressForceKn(220);
        m.setThroatDepthMm(1250);
        m.setClamps(SHOP.createClamps());
        return m;
    }

    private static void place(punchwright.model.shop.Machine m, double limitKn, ToolFamily... accepts) {
        Place p = SHOP.createPlace();
        p.setId("p" + m.getPlaces().size());
        p.setForceLimitKn(limitKn);
        p.getAccepts().addAll(List.of(accepts));
        m.getPlaces().add(p);
    }

    @Test
    void forcesBecomeNewtonsAndAPlaceWithoutLimitTakesThePresss() {
        punchwright.model.shop.Machine m = machine(HeadKind.TURRET);
        place(m, 0);
        place(m, 118);

        Machine engine = MachineReader.read(m);

        assertEquals(220_000, engine.pressForceN());
        assertEquals(220_000, engine.places().get(0).forceLimitN());
        assertEquals(118_000, engine.places().get(1).forceLimitN());
    }

    @Test
    void aPlaceTakesAHolderWhenItTakesEverythingOrNamesHolders() {
        punchwright.model.shop.Machine m = machine(HeadKind.TURRET);
        place(m, 0);
        place(m, 0, ToolFamily.PUNCHING);
        place(m, 0, ToolFamily.PUNCHING, ToolFamily.HOLDER);

        Machine engine = MachineReader.read(m);

        assertTrue(engine.places().get(0).takesHolder());
        assertFalse(engine.places().get(1).takesHolder());
        assertTrue(engine.places().get(2).takesHolder());
    }

    @Test
    void theAutomaticChangeIsThatOfTheHeadAndByHandStandsInWhereThereIsNone() {
        punchwright.model.shop.Machine turret = machine(HeadKind.TURRET);
        change(turret, ChangeKind.TURRET_INDEX, 1.5);
        change(turret, ChangeKind.MAGAZINE, 99);
        punchwright.model.shop.Machine byHand = machine(HeadKind.SINGLE_HEAD);
        change(byHand, ChangeKind.BY_HAND, 20);

        assertEquals(1.5, MachineReader.read(turret).times().toolChangeS());
        assertEquals(20, MachineReader.read(byHand).times().toolChangeS());
    }

    private static void change(punchwright.model.shop.Machine m, ChangeKind kind, double s) {
        ChangeTime c = SHOP.createChangeTime();
        c.setKind(kind);
        c.setTimeS(s);
        m.getChangeTimes().add(c);
    }

    @Test
    void stockIsGroupedByMaterialAndThicknessAndEmptyShelvesAreLeftOut() {
        Material dc = SHOP.createMaterial();
        dc.setId("dc");
        List<StockGroup> groups = StockReader.read(List.of(sheet(dc, "a", 2, 5, false), sheet(dc, "b", 2, 0, true),
                sheet(dc, "c", 3, 1, false), sheet(dc, "d", 3, 0, false)));

        assertEquals(2, groups.size());
        assertEquals(List.of(5, StockReader.AS_MANY_AS_NEEDED), groups.get(0).offers().stream().map(o -> o.quantity()).toList());
        assertEquals(List.of("c"), groups.get(1).offers().stream().map(o -> o.id()).toList());
    }

    private static StockSheet sheet(Material material, String id, double t, int quantity, boolean orderable) {
        StockSheet s = SHOP.createStockSheet();
        s.setId(id);
        s.setMaterial(material);
        s.setThicknessMm(t);
        s.setQuantity(quantity);
        s.setOrderable(orderable);
        return s;
    }
}
