// SPDX-License-Identifier: EPL-2.0
package punchwright.model;

import java.util.List;

import punchwright.model.plan.Hit;
import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Operation;
import punchwright.model.plan.Placement;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanFactory;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.ChangeKind;
import punchwright.model.shop.ChangeTime;
import punchwright.model.shop.Clamps;
import punchwright.model.shop.GroupLife;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MachineRate;
import punchwright.model.shop.Material;
import punchwright.model.shop.MaterialGroup;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.model.shop.Revision;
import punchwright.model.shop.SecondaryRate;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.Standing;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.Assembly;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.HolePattern;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;
import punchwright.model.work.PlateShape;
import punchwright.model.work.WorkFactory;

/** Small invented objects for tests; every one of them breaks no rule. */
public final class Samples {

    public static final ShopFactory SHOP = ShopFactory.eINSTANCE;
    public static final WorkFactory WORK = WorkFactory.eINSTANCE;
    public static final PlanFactory PLAN = PlanFactory.eINSTANCE;

    private Samples() {
    }

    /** A library with one object of each kind. */
    public static Library library() {
        Library library = SHOP.createLibrary();
        library.setId("library");
        library.setName("Test shop");
        Revision revision = SHOP.createRevision();
        revision.setNumber(1);
        revision.setDate("2026-01-15");
        revision.setWho("A. Probe");
        revision.setWhy("First entry");
        library.getRevisions().add(revision);
        library.setRates(SHOP.createRates());
        library.getRates().setLabourPerHour(42);
        SecondaryRate deburr = SHOP.createSecondaryRate();
        deburr.setId("deburr");
        deburr.setName("Deburring");
        deburr.setPerHour(40);
        library.getRates().getSecondary().add(deburr);
        library.getTools().add(tool("r10", ToolShape.ROUND, 10, 0));
        library.getTools().add(tool("s50", ToolShape.SLITTING, 50, 5));
        library.getHolders().add(holder());
        library.getMaterials().add(material());
        library.getMachines().add(machine(library));
        library.getStock().add(stock(library.getMaterials().get(0)));
        return library;
    }

    public static Tool tool(String id, ToolShape shape, double lengthMm, double widthMm) {
        Tool tool = SHOP.createTool();
        tool.setId(id);
        tool.setName("Tool " + id);
        tool.setShape(shape);
        tool.setLengthMm(lengthMm);
        tool.setWidthMm(widthMm);
        tool.getDieClearancesMm().addAll(List.of(0.2, 0.3, 0.4));
        tool.setPrice(120);
        tool.setGrindsLeft(8);
        tool.setGrindCost(12);
        GroupLife life = SHOP.createGroupLife();
        life.setGroup(MaterialGroup.MILD_STEEL);
        life.setHitsPerGrind(60000);
        tool.getLives().add(life);
        tool.setLocation("A1");
        return tool;
    }

    public static MultiToolHolder holder() {
        MultiToolHolder holder = SHOP.createMultiToolHolder();
        holder.setId("six");
        holder.setName("Holder for six");
        holder.setInsertCount(6);
        holder.setLargestInsertDiameterMm(16);
        holder.setForceLimitKn(110);
        holder.setOuterDiameterMm(90);
        holder.setIndexTimeS(0.8);
        return holder;
    }

    public static Material material() {
        Material material = SHOP.createMaterial();
        material.setId("dc01");
        material.setName("DC01 cold rolled");
        material.setGrade("DC01");
        material.setStandard("EN 10130");
        material.setGroup(MaterialGroup.MILD_STEEL);
        material.setDensityKgPerDm3(7.85);
        material.setTensileMinMPa(270);
        material.setTensileMaxMPa(410);
        material.setShearStrengthMPa(320);
        material.setShearStrengthSource("0.8 of the upper tensile strength, rounded");
        material.setPricePerKg(1.1);
        material.setPriceDate("2026-01-10");
        material.setScrapValuePerKg(0.2);
        material.setClearanceTotalPercent(18);
        material.getThicknessesMm().addAll(List.of(1.0, 1.5, 2.0));
        return material;
    }

    public static StockSheet stock(Material material) {
        StockSheet stock = SHOP.createStockSheet();
        stock.setId("dc01-15-medium");
        stock.setName("DC01 1.5 x 1250 x 2500");
        stock.setMaterial(material);
        stock.setLengthMm(2500);
        stock.setWidthMm(1250);
        stock.setThicknessMm(1.5);
        stock.setQuantity(40);
        return stock;
    }

    public static Machine machine(Library library) {
        Machine machine = SHOP.createMachine();
        machine.setId("press");
        machine.setName("Test press");
        machine.setThroatDepthMm(1300);
        machine.setTravelXMm(2550);
        machine.setTravelYMm(1270);
        machine.setMaxSpeedXMmPerS(1000);
        machine.setMaxSpeedYMmPerS(900);
        machine.setAccelerationXMmPerS2(8000);
        machine.setAccelerationYMmPerS2(7000);
        machine.setPositioningAccuracyMm(0.1);
        machine.setLongestSheetMm(5000);
        machine.setMinThicknessMm(0.5);
        machine.setMaxThicknessMm(6.4);
        machine.setMaxSheetMassKg(150);
        machine.setPressForceKn(220);
        machine.setStrokeTimeS(0.12);
        machine.setNibblingRatePerMin(600);
        machine.setNibblingMaxPitchMm(5);
        machine.setRepositionTimeS(6);
        machine.setLoadTimeS(40);
        machine.setUnloadTimeS(30);
        machine.setSlugOpeningMm(60);
        for (String id : List.of("p1", "p2")) {
            Place place = SHOP.createPlace();
            place.setId(id);
            place.setName(id.substring(1));
            place.setMaxToolDiameterMm(100);
            machine.getPlaces().add(place);
        }
        ChangeTime byHand = SHOP.createChangeTime();
        byHand.setKind(ChangeKind.BY_HAND);
        byHand.setTimeS(12);
        machine.getChangeTimes().add(byHand);
        machine.setClamps(clamps());
        machine.setOptions(SHOP.createMachineOptions());
        machine.setRate(rate());
        Standing standing = SHOP.createStanding();
        standing.setPlace(machine.getPlaces().get(0));
        standing.setTool(library.getTools().get(0));
        machine.getStanding().add(standing);
        return machine;
    }

    private static Clamps clamps() {
        Clamps clamps = SHOP.createClamps();
        clamps.setCount(2);
        clamps.setMaxCount(4);
        clamps.setWidthMm(60);
        clamps.setDepthMm(30);
        clamps.setDeadZoneMm(10);
        clamps.setTravelMinXMm(100);
        clamps.setTravelMaxXMm(2400);
        clamps.setLeastSpacingMm(150);
        return clamps;
    }

    private static MachineRate rate() {
        MachineRate rate = SHOP.createMachineRate();
        rate.setPurchaseValue(300000);
        rate.setReplacementValue(330000);
        rate.setLifeYears(10);
        rate.setHoursPerYear(3000);
        rate.setInterestRatePercent(6);
        rate.setLoadFactorPercent(60);
        rate.setOccupancyPercent(85);
        return rate;
    }

    public static Part part(Library library) {
        Part part = WORK.createPart();
        part.setId("cover");
        part.setName("Cover");
        part.setNumber("4711");
        part.setRevision("A");
        part.setMaterial(library.getMaterials().get(0));
        part.setThicknessMm(1.5);
        PlateShape plate = WORK.createPlateShape();
        plate.setLengthMm(300);
        plate.setWidthMm(200);
        HolePattern holes = WORK.createHolePattern();
        holes.setSizeMm(10);
        holes.setXMm(20);
        holes.setYMm(20);
        holes.setCountX(3);
        holes.setCountY(2);
        holes.setPitchXMm(130);
        holes.setPitchYMm(160);
        plate.getHoles().add(holes);
        part.setShape(plate);
        return part;
    }

    public static Assembly assembly(Part part) {
        Assembly assembly = WORK.createAssembly();
        assembly.setId("box");
        assembly.setName("Box");
        assembly.setNumber("4700");
        AssemblyItem item = WORK.createAssemblyItem();
        item.setItem(part);
        item.setQuantity(4);
        assembly.getItems().add(item);
        return assembly;
    }

    public static Order order(Part part) {
        Order order = WORK.createOrder();
        order.setId("o-100");
        order.setName("First order");
        order.setNumber("100");
        order.setCustomer("Probe & Muster");
        order.setReceived("2026-01-20");
        order.setDueDate("2026-02-20");
        OrderLine line = WORK.createOrderLine();
        line.setId("o-100-1");
        line.setItem(part);
        line.setQuantity(50);
        line.getLots().addAll(List.of(10, 100));
        order.getLines().add(line);
        return order;
    }

    public static Plan plan(Library library, Part part, Order order) {
        Plan plan = PLAN.createPlan();
        plan.setId("o-100-press");
        plan.setName("First order on the test press");
        plan.setOrder(order);
        plan.setMachine(library.getMachines().get(0));
        plan.setLibraryRevision(1);
        plan.setProgramVersion("0.1.0");
        SheetJob job = PLAN.createSheetJob();
        job.setId("job-1");
        job.setMaterial(library.getMaterials().get(0));
        job.setThicknessMm(1.5);
        plan.getJobs().add(job);
        ToolUse use = PLAN.createToolUse();
        use.setId("use-1");
        use.setBalloon(1);
        use.setTool(library.getTools().get(0));
        use.setPlace(library.getMachines().get(0).getPlaces().get(0));
        use.setForceKn(15);
        use.setForceLimitKn(220);
        use.setHits(6);
        job.getToolUses().add(use);
        Operation operation = PLAN.createOperation();
        operation.setId("op-1");
        operation.setNumber(1);
        operation.setPart(part);
        operation.setToolUse(use);
        operation.setHitsPerPart(6);
        job.getOperations().add(operation);
        job.getLayouts().add(layout(library, part, use, operation));
        return plan;
    }

    private static Layout layout(Library library, Part part, ToolUse use, Operation operation) {
        Layout layout = PLAN.createLayout();
        layout.setId("layout-1");
        layout.setNumber(1);
        layout.setStock(library.getStock().get(0));
        layout.setLengthMm(2500);
        layout.setWidthMm(1250);
        layout.setUtilisationPercent(1.9);
        Placement placement = PLAN.createPlacement();
        placement.setId("piece-1");
        placement.setNumber(1);
        placement.setPart(part);
        placement.setXMm(20);
        placement.setYMm(100);
        layout.getPlacements().add(placement);
        Holding holding = PLAN.createHolding();
        holding.setId("holding-1");
        holding.setIndex(1);
        holding.getClampPositionsMm().addAll(List.of(300.0, 1800.0));
        layout.getHoldings().add(holding);
        for (int i = 0; i < 6; i++) {
            Hit hit = PLAN.createHit();
            hit.setXMm(40 + 130 * (i % 3));
            hit.setYMm(120 + 160 * (i / 3));
            hit.setStartS(0.2 * i);
            hit.setToolUse(use);
            hit.setHolding(holding);
            hit.setOperation(operation);
            hit.setPlacement(placement);
            layout.getHits().add(hit);
        }
        return layout;
    }
}
