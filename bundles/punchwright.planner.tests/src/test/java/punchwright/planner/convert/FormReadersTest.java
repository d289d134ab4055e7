// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.press.FormClearance;
import punchwright.engine.tooling.ToolRoom;
import punchwright.model.shop.FormDirection;
import punchwright.model.shop.HeadKind;
import punchwright.model.shop.Material;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.HolePattern;
import punchwright.model.work.HoleShape;
import punchwright.model.work.Part;
import punchwright.model.work.PartForm;
import punchwright.model.work.PlateShape;
import punchwright.model.work.WorkFactory;

/** What records say of forms reaches the engine: room around tools and on machines, and core holes. */
class FormReadersTest {

    private static final ShopFactory SHOP = ShopFactory.eINSTANCE;
    private static final WorkFactory WORK = WorkFactory.eINSTANCE;

    @Test
    void theRoomOfAToolIsRead() {
        Tool t = SHOP.createTool();
        t.setId("t");
        t.setShape(ToolShape.COLLAR);
        t.setLengthMm(8);
        t.setFormHeightMm(3);
        t.setFormDirection(FormDirection.DOWN);
        t.setKeepClearMm(4);
        t.setBodyDiameterMm(40);
        t.setDieRadiusMm(0.8);
        t.setHitsPerForm(2);
        punchwright.engine.tooling.Tool read = new ToolReader(null).read(t);
        assertEquals(new ToolRoom(4, 40, 0.8, 2), read.room());
        assertEquals(-3, read.standsMm());
    }

    @Test
    void theClearRoomOfAMachineIsRead() {
        punchwright.model.shop.Machine m = SHOP.createMachine();
        m.setHeadKind(HeadKind.TURRET);
        m.setClamps(SHOP.createClamps());
        assertEquals(FormClearance.NOT_GIVEN, MachineReader.read(m).formClearance());
        m.setFormClearanceUpMm(12);
        m.setFormClearanceDownMm(2);
        m.setHoldDownDiameterMm(90);
        assertEquals(new FormClearance(12, 2, 90), MachineReader.read(m).formClearance());
    }

    /** A core hole that the shape lacks is punched; one that it shows, of whatever size, is the drawing's. */
    @Test
    void coreHolesArePunched() {
        Part part = WORK.createPart();
        part.setName("p");
        Material steel = SHOP.createMaterial();
        part.setMaterial(steel);
        PlateShape plate = WORK.createPlateShape();
        plate.setLengthMm(200);
        plate.setWidthMm(100);
        HolePattern hole = WORK.createHolePattern();
        hole.setShape(HoleShape.ROUND);
        hole.setXMm(50);
        hole.setYMm(50);
        hole.setSizeMm(4.5);
        plate.getHoles().add(hole);
        part.setShape(plate);
        form(part, 50);
        form(part, 150);
        Shape shape = new PartReader(null).demand(part, 1).shape();
        assertEquals(2, shape.holes().size());
        assertEquals(new Point(150, 50), shape.holes().get(1).bounds().center());
        assertEquals(4.2, shape.holes().get(1).bounds().width(), 1e-9);
    }

    private static void form(Part part, double x) {
        PartForm form = WORK.createPartForm();
        form.setKind(punchwright.model.shop.ToolShape.COLLAR);
        form.setXMm(x);
        form.setYMm(50);
        form.setLengthMm(8);
        form.setWidthMm(8);
        form.setCoreHoleMm(4.2);
        part.getForms().add(form);
    }
}
