// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.costing.CostCell;
import punchwright.engine.costing.CostJob;
import punchwright.engine.costing.CostLine;
import punchwright.engine.costing.CostPart;
import punchwright.engine.costing.CostSheet;
import punchwright.engine.costing.Expression;
import punchwright.engine.costing.MachineRateInputs;
import punchwright.engine.costing.OrderCost;
import punchwright.engine.costing.SecondaryOperation;
import punchwright.engine.costing.SheetRun;
import punchwright.engine.costing.SheetWork;
import punchwright.engine.costing.ShopRates;
import punchwright.engine.costing.ToolPrice;
import punchwright.model.plan.CostItem;
import punchwright.model.plan.Finding;
import punchwright.model.plan.Hit;
import punchwright.model.plan.HitRole;
import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.MicroJoint;
import punchwright.model.plan.Operation;
import punchwright.model.plan.OperationKind;
import punchwright.model.plan.Placement;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanFactory;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.Severity;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.TimeCause;
import punchwright.model.plan.TimeShare;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Clamps;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.model.shop.Revision;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;

/**
 * A small invented order on a long sheet with two holdings, made by hand so that the writers can be tested without the
 * planner.
 */
final class SamplePlan {

    private static final PlanFactory PLAN = PlanFactory.eINSTANCE;
    private static final ShopFactory SHOP = ShopFactory.eINSTANCE;
    private static final double[][] GRID_A = {{20, 40, 3, 4}, {20, 40, 420, 4}};

    final Library library = SHOP.createLibrary();
    final Order order = WorkFactory.eINSTANCE.createOrder();
    final Plan plan;
    final Part cover = part("cover", "WB-2210", "Cover plate, left", 2);
    final Part bracket = part("bracket", "WB-0417", "Mounting bracket", 2);
    private final List<Tool> tools = new ArrayList<>();
    private final List<ToolUse> uses = new ArrayList<>();
    private final Machine machine;
    private final Material material = SHOP.createMaterial();

    private SamplePlan(String machineId, String machineName) {
        library.setId("lib");
        library.setName("Blechwerk Auental");
        library.setCurrency("EUR");
        revision(1, "2026-01-12", "M. Aydin", "Library taken over from the card index");
        revision(2, "2026-03-02", "J. Holm", "New sheet prices, slitting tool 56 x 5 ground");
        machine = machine(machineId, machineName);
        library.getMachines().add(machine);
        stock();
        tools();
        order();
        plan = plan();
    }

    static SamplePlan create() {
        return create("TR30", "Turret press 30");
    }

    static SamplePlan create(String machineId, String machineName) {
        return new SamplePlan(machineId, machineName);
    }

    private void revision(int number, String date, String who, String why) {
        Revision r = SHOP.createRevision();
        r.setNumber(number);
        r.setDate(date);
        r.setWho(who);
        r.setWhy(why);
        library.getRevisions().add(r);
    }

    private static Machine machine(String id, String name) {
        Machine m = SHOP.createMachine();
        m.setId(id);
        m.setName(name);
        Clamps clamps = SHOP.createClamps();
        clamps.setCount(3);
        clamps.setWidthMm(80);
        clamps.setDepthMm(55);
        clamps.setDeadZoneMm(15);
        m.setClamps(clamps);
        for (int i = 1; i <= 12; i++) {
            Place place = SHOP.createPlace();
            place.setId("T" + i);
            place.setName("T" + i);
            m.getPlaces().add(place);
        }
        return m;
    }

    private void stock() {
        material.setId("dc01");
        material.setName("DC01");
        material.setGrade("DC01");
        material.setStandard("EN 10130");
        material.setDensityKgPerDm3(7.85);
        library.getMaterials().add(material);
        StockSheet sheet = SHOP.createStockSheet();
        sheet.setId("st-2500");
        sheet.setName("DC01 2500 x 1250 x 2");
        sheet.setLocation("rack 4-B");
        library.getStock().add(sheet);
    }

    private void tools() {
        tool("RD-05", "Round 5", ToolShape.ROUND, 5, 0, 0);
        tool("RD-12", "Round 12", ToolShape.ROUND, 12, 0, 0);
        tool("SQ-20", "Square 20", ToolShape.SQUARE, 20, 0, 0);
        tool("OB-30", "Obround 30 x 8", ToolShape.OBROUND, 30, 8, 0);
        tool("SL-56", "Slitting 56 x 5", ToolShape.SLITTING, 56, 5, 0);
        tool("CR-05", "Corner R5", ToolShape.CORNER_RADIUS, 20, 20, 5);
        tool("HX-17", "Hexagon 17", ToolShape.HEXAGON, 17, 0, 0);
        tool("LV-60", "=Louvre 60 x 12", ToolShape.LOUVRE, 60, 12, 3);
    }

    private void tool(String id, String name, ToolShape shape, double length, double width, double radius) {
        Tool t = SHOP.createTool();
        t.setId(id);
        t.setName(name);
        t.setShape(shape);
        t.setLengthMm(length);
        t.setWidthMm(width);
        t.setCornerRadiusMm(radius);
        library.getTools().add(t);
        tools.add(t);
    }

    private static Part part(String id, String number, String name, double thickness) {
        Part p = WorkFactory.eINSTANCE.createPart();
        p.setId(id);
        p.setNumber(number);
        p.setRevision("B");
        p.setName(name);
        p.setThicknessMm(thickness);
        return p;
    }

    private void order() {
        order.setId("o-2041");
        order.setNumber("2041");
        order.setName("Housing covers, spring call-off");
        order.setCustomer("Kranhaus Pumpen");
        order.setReceived("2026-03-04");
        order.setDueDate("2026-04-10");
        line(cover, 40, 10, 100, 400);
        line(bracket, 200);
    }

    private void line(Part item, int quantity, Integer... lots) {
        OrderLine l = WorkFactory.eINSTANCE.createOrderLine();
        l.setId("line-" + item.getId());
        l.setItem(item);
        l.setQuantity(quantity);
        l.getLots().addAll(List.of(lots));
        order.getLines().add(l);
    }

    private Plan plan() {
        Plan p = PLAN.createPlan();
        p.setId("plan-2041-" + machine.getId());
        p.setOrder(order);
        p.setMachine(machine);
        p.setStatus(PlanStatus.PROVEN);
        p.setLibraryRevision(2);
        p.setProgramVersion("0.1.0");
        SheetJob job = PLAN.createSheetJob();
        job.setId("job-1");
        job.setMaterial(material);
        job.setThicknessMm(2);
        p.getJobs().add(job);
        uses(job);
        operations(job);
        job.getLayouts().add(layout());
        time(job.getSetUp(), TimeCause.SET_UP, 1440, 1);
        finding(p, Severity.WARNING, "TOOLING-CLEARANCE", "tool OB-30",
                "The chosen total clearance 0.40 mm is 0.08 mm above the need of 0.32 mm.",
                "Order a die with 0.30 mm.");
        finding(p, Severity.NOTE, "LAYOUT-REMNANT", "layout 1", "A strip of 2500 x 120 mm remains.", "");
        p.getChecks().addAll(List.of("Every hit lies inside the reach of its holding", "No hit lies under a clamp",
                "Made edges agree with the drawing within 0.1 mm"));
        return p;
    }

    private static void finding(Plan plan, Severity severity, String code, String subject, String message, String remedy) {
        Finding f = PLAN.createFinding();
        f.setSeverity(severity);
        f.setCode(code);
        f.setSubject(subject);
        f.setMessage(message);
        f.setRemedy(remedy);
        plan.getFindings().add(f);
    }

    private void uses(SheetJob job) {
        MultiToolHolder holder = SHOP.createMultiToolHolder();
        holder.setId("MT-10");
        holder.setName("Holder for ten inserts");
        for (int i = 0; i < tools.size(); i++) {
            ToolUse use = PLAN.createToolUse();
            use.setId("use-" + (i + 1));
            use.setBalloon(i + 1);
            use.setTool(tools.get(i));
            use.setPlace(machine.getPlaces().get(i < 2 ? 0 : i));
            if (i < 2) {
                use.setHolder(holder);
                use.setInsertPosition(i + 1);
            }
            use.setClearanceWantedMm(0.32);
            use.setClearanceMm(i == 3 ? 0.4 : 0.3);
            use.setForceKn(12.3 + 9.7 * i);
            use.setForceLimitKn(i < 2 ? 45 : 300);
            use.setStrippingKn(1.2 + i);
            use.setHits(160 * (i + 1));
            use.setLifeSharePercent(0.4 * (i + 1));
            use.setStanding(i % 3 == 0);
            job.getToolUses().add(use);
            uses.add(use);
        }
    }

    private void operations(SheetJob job) {
        String[] what = {"4 round holes Ø5", "round hole Ø12", "square opening 20 x 20", "slot 30 x 8", "outer edges",
                "corners R5",
            "hexagonal hole 17", "louvre 60 x 12"};
        for (int i = 0; i < what.length; i++) {
            Operation op = PLAN.createOperation();
            op.setId("op-" + (i + 1));
            op.setNumber(i + 1);
            op.setPart(i % 4 == 3 ? bracket : cover);
            op.setDescription(what[i]);
            op.setKind(i == 4 ? OperationKind.SLITTING : OperationKind.SINGLE);
            op.setToolUse(uses.get(i));
            op.setHitsPerPart(4);
            op.setPitchMm(i == 4 ? 54 : 0);
            op.setForceKn(uses.get(i).getForceKn());
            op.setXMm(30 + 40 * i);
            op.setYMm(25.5);
            op.setTimeSPerPart(1.2 + 0.3 * i);
            op.setReason("One hit makes it; the die on hand is 0.02 mm below the need.");
            job.getOperations().add(op);
        }
    }

    private Layout layout() {
        Layout l = PLAN.createLayout();
        l.setId("layout-1");
        l.setNumber(1);
        l.setStock(library.getStock().get(0));
        l.setLengthMm(2500);
        l.setWidthMm(1250);
        l.setRunCount(5);
        l.setUtilisationPercent(81.4);
        l.setClampZoneMm(75);
        l.setWebMm(5);
        holding(l, 1, 0, 1500, 180.0, 700.0, 1300.0);
        holding(l, 2, 1100, 2500, 1320.0, 1800.0, 2400.0);
        int number = 1;
        for (int row = 0; row < 2; row++) {
            for (int column = 0; column < 4; column++) {
                number = cover(l, 30 + column * 425, 100 + row * 325, number);
            }
        }
        for (int row = 0; row < 8; row++) {
            for (int column = 0; column < 5; column++) {
                number = bracket(l, 1760 + column * 145, 100 + row * 85, number);
            }
        }
        time(l.getTimes(), TimeCause.LOAD, 45, 1);
        time(l.getTimes(), TimeCause.MOVE, 131.5, l.getHits().size());
        time(l.getTimes(), TimeCause.STROKE, 62.4, l.getHits().size());
        time(l.getTimes(), TimeCause.TOOL_CHANGE, 21, 7);
        time(l.getTimes(), TimeCause.REPOSITION, 6, 1);
        time(l.getTimes(), TimeCause.UNLOAD, 30, 1);
        l.setCycleTimeS(295.9);
        l.setBoundTimeS(241.2);
        return l;
    }

    private static void holding(Layout l, int index, double from, double to, Double... clamps) {
        Holding h = PLAN.createHolding();
        h.setId("h-" + index);
        h.setIndex(index);
        h.setReachMinXMm(from);
        h.setReachMaxXMm(to);
        h.setReachMaxYMm(1250);
        h.setSheetOffsetMm(from);
        h.getClampPositionsMm().addAll(List.of(clamps));
        l.getHoldings().add(h);
    }

    private int cover(Layout l, double x, double y, int number) {
        Placement p = placement(l, cover, x, y, number);
        for (double[] row : GRID_A) {
            for (int i = 0; i < 4; i++) {
                hit(l, p, 0, x + (row[2] > 100 ? 380 : 20), y + 30 + 70 * i, 0, HitRole.PIERCE);
            }
        }
        hit(l, p, 1, x + 200, y + 60, 0, HitRole.PIERCE);
        hit(l, p, 2, x + 120, y + 150, 0, HitRole.PIERCE);
        hit(l, p, 6, x + 280, y + 150, 0, HitRole.PIERCE);
        for (int i = 0; i < 5; i++) {
            hit(l, p, 7, x + 100 + 50 * i, y + 230, 90, HitRole.FORM);
        }
        for (int i = 0; i < 8; i++) {
            hit(l, p, 4, x + 28 + i * 49, y - 2.5, 0, HitRole.SLIT);
            hit(l, p, 4, x + 28 + i * 49, y + 302.5, 0, HitRole.SLIT);
        }
        for (int i = 0; i < 6; i++) {
            hit(l, p, 4, x - 2.5, y + 28 + i * 48.8, 90, HitRole.SLIT);
            hit(l, p, 4, x + 402.5, y + 28 + i * 48.8, 90, HitRole.SLIT);
        }
        joint(l, p, x, y);
        joint(l, p, x + 400, y + 300);
        return number + 1;
    }

    private int bracket(Layout l, double x, double y, int number) {
        Placement p = placement(l, bracket, x, y, number);
        hit(l, p, 3, x + 35, y + 40, 0, HitRole.PIERCE);
        hit(l, p, 3, x + 105, y + 40, 0, HitRole.PIERCE);
        hit(l, p, 1, x + 70, y + 20, 0, HitRole.PIERCE);
        hit(l, p, 5, x, y, 0, HitRole.PIERCE);
        joint(l, p, x + 140, y + 80);
        return number + 1;
    }

    private static Placement placement(Layout l, Part part, double x, double y, int number) {
        Placement p = PLAN.createPlacement();
        p.setId("p-" + number);
        p.setNumber(number);
        p.setPart(part);
        p.setXMm(x);
        p.setYMm(y);
        l.getPlacements().add(p);
        return p;
    }

    private void hit(Layout l, Placement p, int use, double x, double y, double angle, HitRole role) {
        Hit h = PLAN.createHit();
        h.setXMm(x);
        h.setYMm(y);
        h.setAngleDeg(angle);
        h.setRole(role);
        h.setToolUse(uses.get(use));
        h.setPlacement(p);
        h.setHolding(l.getHoldings().get(x < 1300 ? 0 : 1));
        l.getHits().add(h);
    }

    private static void joint(Layout l, Placement p, double x, double y) {
        MicroJoint j = PLAN.createMicroJoint();
        j.setPlacement(p);
        j.setXMm(x);
        j.setYMm(y);
        j.setWidthMm(0.25);
        l.getMicroJoints().add(j);
    }

    private static void time(List<TimeShare> times, TimeCause cause, double seconds, int count) {
        TimeShare t = PLAN.createTimeShare();
        t.setCause(cause);
        t.setSeconds(seconds);
        t.setCount(count);
        times.add(t);
    }

    /** Edges of the two parts; rectangles with their openings. */
    PartOutline outline(Part part) {
        if (part == cover) {
            return new PartOutline(List.of(new double[] {0, 0, 400, 0, 400, 300, 0, 300}, square(120, 150, 20), circle(200, 60,
                    12)));
        }
        return new PartOutline(List.of(new double[] {5, 0, 140, 0, 140, 80, 0, 80, 0, 5}, circle(70, 20, 12)));
    }

    private static double[] square(double x, double y, double side) {
        double h = side / 2;
        return new double[] {x - h, y - h, x + h, y - h, x + h, y + h, x - h, y + h};
    }

    private static double[] circle(double x, double y, double diameter) {
        double[] xy = new double[64];
        for (int i = 0; i < 32; i++) {
            xy[2 * i] = x + diameter / 2 * Math.cos(Math.PI * i / 16);
            xy[2 * i + 1] = y + diameter / 2 * Math.sin(Math.PI * i / 16);
        }
        return xy;
    }

    /** The cost job that fits the plan, with one input replaced where {@code changes} names it. */
    CostJob costJob(Locale locale, String code, Map<String, Double> changes) {
        Inputs in = new Inputs(changes);
        MachineRateInputs rate = new MachineRateInputs(machine.getName(), in.of(code + "_H_purchase", 380_000),
                in.of(code + "_H_replacement", 450_000), 20_000, in.of(code + "_H_life", 8), 3200, in.of(code + "_H_occupancy",
                        80),
                in.of(code + "_H_interest_rate", 6), MachineRateInputs.InterestBasis.PURCHASE, 60, 96, 18, 60,
                in.of(code + "_H_energy_price", 0.25), 5, 0, in.of(code + "_H_attendance", 60));
        ShopRates rates = new ShopRates(in.of("R_labour", 38.5), 0, in.of("R_programmer", 52), in.of("R_set_up_base", 10),
                in.of("R_set_up_per_tool", 2.5), 25, in.of("R_programming_lots", 4), in.of("R_first_piece", 6),
                in.of("R_consumables", 1.8), in.of("R_remnant_credit", 80), in.of("R_scrap_rate", 1.5),
                in.of("R_material_overhead", 6.13), in.of("R_production_overhead", 45), in.of("R_admin_overhead", 4.51),
                in.of("R_sales_overhead", 2.91), in.of("R_profit", 8));
        SheetWork work = new SheetWork("DC01, 2 mm", "dc01", in.of("Mat_dc01_scrap_value", 0.21), 1, 5,
                List.of(new SheetRun("st-2500", "2500 × 1250 × 2", in.of("S_st_2500_price", 58.4), 49.06, 295.9, 5, 4.7)),
                tools.stream().map(t -> new ToolPrice(t.getId(), t.getName(), in.of("T_" + t.getId().replace('-', '_')
                        + "_price", 120), 0,
                        12, 14, 90_000)).toList());
        return new CostJob("2041 / " + machine.getName(), "EUR", locale, code, rate, rates, List.of(work), parts(in), lines(in));
    }

    private List<CostPart> parts(Inputs in) {
        Map<String, Integer> coverHits = new LinkedHashMap<>();
        tools.forEach(t -> coverHits.put(t.getId(), 4));
        CostPart a = new CostPart("cover", "WB-2210 Cover plate, left", 0, 40, 1.78, 405 * 305, 14.2, coverHits, 25, List.of());
        CostPart b = new CostPart("bracket", "WB-0417 Mounting bracket", 0, 200, 0.171, 145 * 85, 2.3, Map.of("OB-30", 2), 25,
                List.of(new SecondaryOperation("bend", "Bending", in.of("W_bend_rate", 55), 8, 0.4)));
        return List.of(a, b);
    }

    private static List<CostLine> lines(Inputs in) {
        return List.of(new CostLine("l1", "WB-2210 Cover plate, left", 40, List.of(new CostLine.Need("cover", 1)),
                List.of(new CostLine.Purchase("seal", "Seal 8 x 1200", in.of("L1_B_seal_price", 1.37), 1)), 0, List.of(10, 100,
                        400)),
                new CostLine("l2", "WB-0417 Mounting bracket", 200, List.of(new CostLine.Need("bracket", 1)), List.of(), 0,
                        List.of()));
    }

    /** Values of inputs, changed ones by their cell name; every change must be used. */
    record Inputs(Map<String, Double> changes) {
        double of(String name, double usual) {
            return changes.getOrDefault(name, usual);
        }
    }

    /** Calculates the cost and puts every figure into the plan. */
    CostSheet cost(Locale locale, String code) {
        CostSheet sheet = OrderCost.calculate(costJob(locale, code, Map.of()));
        plan.getFigures().clear();
        sheet.cells().forEach(c -> plan.getFigures().add(item(c)));
        return sheet;
    }

    private static CostItem item(CostCell cell) {
        CostItem item = PLAN.createCostItem();
        item.setKey(cell.name());
        item.setLabel(cell.label());
        item.setHeading(cell.group());
        item.setUnit(cell.unit());
        item.setValue(cell.value());
        item.setSource(cell.source());
        if (cell.formula() instanceof Expression formula) {
            item.setFormula(formula.text());
        }
        return item;
    }
}
