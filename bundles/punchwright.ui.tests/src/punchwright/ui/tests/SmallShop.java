// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import java.nio.file.Path;
import java.util.List;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;
import punchwright.model.shop.AngleFreedom;
import punchwright.model.shop.ChangeKind;
import punchwright.model.shop.ChangeTime;
import punchwright.model.shop.Clamps;
import punchwright.model.shop.GroupLife;
import punchwright.model.shop.HeadKind;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MachineRate;
import punchwright.model.shop.Material;
import punchwright.model.shop.MaterialGroup;
import punchwright.model.shop.Place;
import punchwright.model.shop.Rates;
import punchwright.model.shop.Revision;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.HolePattern;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;
import punchwright.model.work.PlateShape;
import punchwright.model.work.WorkFactory;

/** A shop just large enough to plan an order: one press, ten tools, one material, one sheet, one plate with holes. */
final class SmallShop {

    private static final ShopFactory SHOP = ShopFactory.eINSTANCE;

    private SmallShop() {
    }

    /** Makes the workspace in an empty folder and closes it again. */
    static void make(Path folder) throws WorkspaceException {
        try (Workspace workspace = Workspace.create(folder, "Small shop", "EUR")) {
            Library library = workspace.library();
            Revision revision = SHOP.createRevision();
            revision.setNumber(1);
            revision.setDate("2026-01-12");
            revision.setWho("Test");
            revision.setWhy("First records");
            library.getRevisions().add(revision);
            rates(library);
            tools(library);
            library.getMachines().add(machine());
            Material steel = steel();
            library.getMaterials().add(steel);
            library.getStock().add(sheet(steel));
            Part plate = plate(steel);
            workspace.put(plate);
            workspace.put(order(plate));
            workspace.saveAll();
        }
    }

    private static void rates(Library library) {
        Rates rates = library.getRates();
        rates.setLabourPerHour(38);
        rates.setProgrammingPerHour(52);
        rates.setSetUpBaseMinutes(10);
        rates.setSetUpMinutesPerTool(2);
        rates.setProgrammingMinutes(20);
        rates.setFirstPieceCheckMinutes(5);
    }

    private static void tools(Library library) {
        for (double diameter : new double[] { 4, 5, 6, 8, 10, 12, 20 }) {
            library.getTools().add(tool("r" + (int) diameter, "Round " + (int) diameter, ToolShape.ROUND, diameter, 0));
        }
        library.getTools().add(tool("s20", "Square 20", ToolShape.SQUARE, 20, 0));
        library.getTools().add(tool("p56x5", "Slitting 56 x 5", ToolShape.SLITTING, 56, 5));
        library.getTools().add(tool("p30x5", "Slitting 30 x 5", ToolShape.SLITTING, 30, 5));
    }

    private static Tool tool(String id, String name, ToolShape shape, double length, double width) {
        Tool tool = SHOP.createTool();
        tool.setId(id);
        tool.setName(name);
        tool.setShape(shape);
        tool.setLengthMm(length);
        tool.setWidthMm(width);
        tool.setAngleFreedom(AngleFreedom.ANY);
        tool.getDieClearancesMm().addAll(List.of(0.2, 0.3, 0.4));
        tool.setPrice(140);
        tool.setGrindsLeft(20);
        tool.setGrindCost(9);
        tool.setOnHand(1);
        tool.setLocation("A" + tool.getName().length());
        GroupLife life = SHOP.createGroupLife();
        life.setGroup(MaterialGroup.MILD_STEEL);
        life.setHitsPerGrind(80000);
        tool.getLives().add(life);
        return tool;
    }

    private static Machine machine() {
        Machine m = SHOP.createMachine();
        m.setId("north");
        m.setName("North press");
        m.setHeadKind(HeadKind.TURRET);
        m.setThroatDepthMm(1300);
        m.setTravelXMm(2050);
        m.setTravelYMm(1290);
        m.setMaxSpeedXMmPerS(1300);
        m.setMaxSpeedYMmPerS(1000);
        m.setAccelerationXMmPerS2(9000);
        m.setAccelerationYMmPerS2(9000);
        m.setSettlingTimeS(0.02);
        m.setPositioningAccuracyMm(0.1);
        m.setLongestSheetMm(4000);
        m.setWidestSheetMm(1300);
        m.setMinThicknessMm(0.5);
        m.setMaxThicknessMm(6.4);
        m.setMaxSheetMassKg(150);
        m.setPressForceKn(200);
        m.setTurnSpeedDegPerS(360);
        m.setStrokeTimeS(0.12);
        m.setNibblingRatePerMin(600);
        m.setNibblingMaxPitchMm(4);
        m.setRepositionTimeS(9);
        m.setTurnOverTimeS(60);
        m.setLoadTimeS(40);
        m.setUnloadTimeS(40);
        m.setPartRemovalTimeS(4);
        for (int k = 1; k <= 12; k++) {
            m.getPlaces().add(place(k));
        }
        ChangeTime change = SHOP.createChangeTime();
        change.setKind(ChangeKind.TURRET_INDEX);
        change.setTimeS(1.6);
        m.getChangeTimes().add(change);
        m.setClamps(clamps());
        m.setOptions(SHOP.createMachineOptions());
        m.setRate(rate());
        return m;
    }

    private static Place place(int number) {
        Place place = SHOP.createPlace();
        place.setId("n" + number);
        place.setName("T" + number);
        place.setIndexPosition(number);
        place.setMaxToolDiameterMm(number > 9 ? 89 : number > 5 ? 50 : 32);
        place.setForceLimitKn(200);
        place.setTurns(number > 10);
        return place;
    }

    private static Clamps clamps() {
        Clamps clamps = SHOP.createClamps();
        clamps.setCount(3);
        clamps.setMaxCount(4);
        clamps.setWidthMm(90);
        clamps.setDepthMm(35);
        clamps.setDeadZoneMm(12);
        clamps.setTravelMinXMm(100);
        clamps.setTravelMaxXMm(1950);
        clamps.setLeastSpacingMm(150);
        return clamps;
    }

    private static MachineRate rate() {
        MachineRate rate = SHOP.createMachineRate();
        rate.setPurchaseValue(320000);
        rate.setReplacementValue(360000);
        rate.setResidualValue(20000);
        rate.setLifeYears(10);
        rate.setHoursPerYear(3000);
        rate.setInterestRatePercent(6);
        rate.setPowerKw(12);
        rate.setLoadFactorPercent(60);
        rate.setEnergyPricePerKwh(0.3);
        rate.setMaintenanceSharePercent(3);
        return rate;
    }

    private static Material steel() {
        Material steel = SHOP.createMaterial();
        steel.setId("dc01");
        steel.setName("DC01 cold rolled");
        steel.setGrade("DC01");
        steel.setStandard("EN 10130");
        steel.setGroup(MaterialGroup.MILD_STEEL);
        steel.setDensityKgPerDm3(7.85);
        steel.setTensileMinMPa(270);
        steel.setTensileMaxMPa(410);
        steel.setShearStrengthMPa(300);
        steel.setShearStrengthSource("invented for the test");
        steel.setPricePerKg(1.15);
        steel.setPriceDate("2026-01-05");
        steel.setScrapValuePerKg(0.2);
        steel.setClearanceTotalPercent(15);
        steel.getThicknessesMm().addAll(List.of(1.5, 2.0));
        return steel;
    }

    private static StockSheet sheet(Material steel) {
        StockSheet sheet = SHOP.createStockSheet();
        sheet.setId("dc01-2-2000");
        sheet.setName("DC01 2 mm, 2000 x 1000");
        sheet.setMaterial(steel);
        sheet.setThicknessMm(2);
        sheet.setLengthMm(2000);
        sheet.setWidthMm(1000);
        sheet.setQuantity(20);
        return sheet;
    }

    private static Part plate(Material steel) {
        Part part = WorkFactory.eINSTANCE.createPart();
        part.setId("plate");
        part.setNumber("PL-100");
        part.setName("Base plate");
        part.setRevision("A");
        part.setMaterial(steel);
        part.setThicknessMm(2);
        PlateShape shape = WorkFactory.eINSTANCE.createPlateShape();
        shape.setLengthMm(300);
        shape.setWidthMm(180);
        HolePattern holes = WorkFactory.eINSTANCE.createHolePattern();
        holes.setSizeMm(8);
        holes.setXMm(25);
        holes.setYMm(25);
        holes.setCountX(6);
        holes.setCountY(3);
        holes.setPitchXMm(50);
        holes.setPitchYMm(65);
        shape.getHoles().add(holes);
        part.setShape(shape);
        return part;
    }

    private static Order order(Part plate) {
        Order order = WorkFactory.eINSTANCE.createOrder();
        order.setId("o1");
        order.setNumber("O-1");
        order.setName("Plates");
        order.setCustomer("Test");
        order.setReceived("2026-01-10");
        order.setDueDate("2026-02-10");
        OrderLine line = WorkFactory.eINSTANCE.createOrderLine();
        line.setId("o1-1");
        line.setItem(plate);
        line.setQuantity(40);
        order.getLines().add(line);
        return order;
    }
}
