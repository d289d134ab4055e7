// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.InternalEObject;

import punchwright.model.Samples;
import punchwright.model.shop.ChangeKind;
import punchwright.model.shop.ChangeTime;
import punchwright.model.shop.ClearanceRule;
import punchwright.model.shop.ClusterPosition;
import punchwright.model.shop.FormDirection;
import punchwright.model.shop.Grain;
import punchwright.model.shop.GroupLife;
import punchwright.model.shop.HeadKind;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.MaterialGroup;
import punchwright.model.shop.OrderRule;
import punchwright.model.shop.Revision;
import punchwright.model.shop.ShearKind;
import punchwright.model.shop.SheetWork;
import punchwright.model.shop.Standing;
import punchwright.model.shop.StockKind;
import punchwright.model.shop.ToolFamily;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.AssemblyItem;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.FlangeShape;
import punchwright.model.work.GrainDemand;
import punchwright.model.work.HoleShape;
import punchwright.model.work.ItemState;
import punchwright.model.work.NotchedBracketShape;
import punchwright.model.work.PartForm;
import punchwright.model.work.PerforatedPanelShape;
import punchwright.model.work.SecondaryWork;

/**
 * For each rule one change of the sample world, in a good and a bad form. The good form is close to the bad one, so that a rule
 * that reports too much is found out as well.
 */
final class RuleCases {

    private static final Map<String, BiConsumer<World, Boolean>> CASES = new LinkedHashMap<>();

    static {
        general();
        library();
        layerRules();
        orderRules();
        machineSizes();
        machineParts();
        standing();
        toolShapes();
        toolState();
        holders();
        materials();
        stock();
        parts();
        shapes();
        holes();
        orders();
        KeptLayoutRuleCases.add();
        PlanRuleCases.add();
    }

    private RuleCases() {
    }

    static Map<String, BiConsumer<World, Boolean>> all() {
        return CASES;
    }

    static void rule(String number, BiConsumer<World, Boolean> change) {
        if (CASES.put("PW-M-" + number, change) != null) {
            throw new IllegalStateException("Two cases for " + number);
        }
    }

    private static void general() {
        rule("001", (w, bad) -> w.tool().setId(bad ? "with space" : "with-hyphen.1"));
        rule("002", (w, bad) -> w.library.getTools().get(1).setId(bad ? "r10" : "r11"));
        rule("003", (w, bad) -> w.tool().setPrice(bad ? Double.NaN : 1));
        rule("004", (w, bad) -> w.machine().setThroatDepthMm(bad ? 0 : 1280));
        rule("005", (w, bad) -> w.tool().setPrice(bad ? -0.01 : 0.01));
        rule("006", (w, bad) -> w.machine().getRate().setHoursPerYear(bad ? 8785 : 8784));
        rule("007", (w, bad) -> w.tool().setName(bad ? " " : "x"));
        rule("008", (w, bad) -> w.part.setMaterial(bad ? null : w.material()));
        rule("009", (w, bad) -> {
            if (bad) {
                Material gone = Samples.SHOP.createMaterial();
                ((InternalEObject) gone).eSetProxyURI(URI.createURI("nowhere.pwlib#gone"));
                w.part.setMaterial(gone);
            }
        });
        rule("010", (w, bad) -> w.material().setPriceDate(bad ? "2026-02-30" : "2026-02-28"));
    }

    private static void layerRules() {
        rule("016", (w, bad) -> layerRule(w, "Colours", bad ? 0 : 3));
        rule("017", (w, bad) -> {
            layerRule(w, "First", 3, "BEND*", "FOLD");
            layerRule(w, "Second", bad ? 3 : 4, "fold", "bend*");
        });
        rule("018", (w, bad) -> {
            layerRule(w, "Wide", 0, "CUT*", "*TEXT*");
            layerRule(w, "Narrow", 5, "CUT-?", bad ? "my-text-1" : "my-txt-1");
        });
        rule("019", (w, bad) -> layerRule(w, "Odd", 0, bad ? "A:B" : "A*B?-1 $"));
    }

    private static void layerRule(World w, String name, int colour, String... layers) {
        LayerRule rule = Samples.SHOP.createLayerRule();
        rule.setId(name.toLowerCase(java.util.Locale.ROOT));
        rule.setName(name);
        rule.setColour(colour);
        rule.getLayerPatterns().addAll(List.of(layers));
        w.library.getLayerRules().add(rule);
    }

    private static void orderRules() {
        rule("072", (w, bad) -> orderRule(w, SheetWork.OPENING, bad ? SheetWork.ANY : SheetWork.FORM));
        rule("073", (w, bad) -> orderRule(w, SheetWork.FORM, bad ? SheetWork.FORM : SheetWork.SEPARATING));
    }

    private static void orderRule(World w, SheetWork first, SheetWork later) {
        OrderRule rule = Samples.SHOP.createOrderRule();
        rule.setId("order");
        rule.setName("Order");
        rule.setFirstWork(first);
        rule.setLaterWork(later);
        w.library.getOrderRules().add(rule);
    }

    private static void library() {
        rule("011", (w, bad) -> w.library.setCurrency(bad ? "Euro" : "CHF"));
        rule("012", (w, bad) -> {
            if (bad) {
                w.library.getRevisions().clear();
            }
        });
        rule("013", (w, bad) -> {
            Revision next = Samples.SHOP.createRevision();
            next.setNumber(bad ? 1 : 2);
            w.library.getRevisions().add(next);
        });
        rule("014", (w, bad) -> w.library.getRates().setLabourPerHour(bad ? 0 : 30));
        rule("015", (w, bad) -> w.library.getRates().setProfitPercent(bad ? 110 : 10));
    }

    private static void machineSizes() {
        rule("020", (w, bad) -> w.machine().setMaxThicknessMm(bad ? 0.4 : 0.5));
        rule("021", (w, bad) -> w.machine().setLongestSheetMm(bad ? 2549 : 2550));
        rule("022", (w, bad) -> w.machine().setTravelYMm(bad ? 1301 : 1300));
        rule("023", (w, bad) -> w.machine().setRepositionTimeS(bad ? 0 : 1));
        rule("024", (w, bad) -> {
            w.machine().setWidestSheetMm(bad ? 1271 : 1270);
            w.machine().setTurnOverTimeS(0);
        });
        rule("041", (w, bad) -> w.machine().setMaxSpeedYMmPerS(bad ? 1.5 : 1500));
        rule("042", (w, bad) -> w.machine().setAccelerationXMmPerS2(bad ? 8 : 8000));
        rule("043", (w, bad) -> w.machine().setPressForceKn(bad ? 22 : 215.7));
        rule("044", (w, bad) -> w.machine().setNibblingRatePerMin(bad ? 48000 : 800));
        rule("037", (w, bad) -> w.machine().setNibblingMaxPitchMm(bad ? 0 : 4));
        rule("038", (w, bad) -> {
            w.machine().getOptions().setPartFlap(true);
            w.machine().setDropLengthMm(500);
            w.machine().setDropWidthMm(bad ? 0 : 400);
        });
        rule("039", (w, bad) -> w.machine().setRate(bad ? null : w.machine().getRate()));
        rule("040", (w, bad) -> w.machine().getRate().setResidualValue(bad ? 330000 : 329999));
    }

    private static void machineParts() {
        rule("025", (w, bad) -> {
            if (bad) {
                w.machine().getPlaces().clear();
            }
        });
        rule("026", (w, bad) -> w.place().setForceLimitKn(bad ? 221 : 220));
        rule("027", (w, bad) -> {
            w.place().setTurns(true);
            w.machine().setTurnSpeedDegPerS(bad ? 0 : 360);
        });
        rule("028", (w, bad) -> {
            w.place().setTurns(true);
            w.place().setTurnAccuracyMm(bad ? 0 : 0.03);
        });
        rule("029", (w, bad) -> {
            w.place().setIndexPosition(3);
            w.machine().getPlaces().get(1).setIndexPosition(bad ? 3 : 4);
        });
        rule("030", (w, bad) -> w.machine().setClamps(bad ? null : w.machine().getClamps()));
        rule("031", (w, bad) -> w.machine().getClamps().setCount(bad ? 5 : 4));
        rule("032", (w, bad) -> w.machine().getClamps().setTravelMinXMm(bad ? 2400 : 200));
        rule("033", (w, bad) -> w.machine().getClamps().setLeastSpacingMm(bad ? 59 : 60));
        rule("034", (w, bad) -> w.machine().getClamps().setLeastSpacingMm(bad ? 2301 : 2300));
        rule("035", (w, bad) -> {
            w.machine().setHeadKind(HeadKind.TURRET);
            ChangeTime time = Samples.SHOP.createChangeTime();
            time.setKind(bad ? ChangeKind.MAGAZINE : ChangeKind.TURRET_INDEX);
            w.machine().getChangeTimes().add(time);
        });
        rule("036", (w, bad) -> {
            ChangeTime time = Samples.SHOP.createChangeTime();
            time.setKind(bad ? ChangeKind.BY_HAND : ChangeKind.MAGAZINE);
            w.machine().getChangeTimes().add(time);
        });
    }

    private static void standing() {
        rule("045", (w, bad) -> {
            Machine other = Samples.machine(w.library);
            other.setId("other");
            w.library.getMachines().add(other);
            w.standing().setPlace(bad ? other.getPlaces().get(0) : w.place());
        });
        rule("046", (w, bad) -> w.place().setMaxToolDiameterMm(bad ? 9.9 : 10));
        rule("047", (w, bad) -> w.place().getAccepts().add(bad ? ToolFamily.FORMING : ToolFamily.PUNCHING));
        rule("048", (w, bad) -> {
            Standing second = Samples.SHOP.createStanding();
            second.setPlace(w.machine().getPlaces().get(bad ? 0 : 1));
            second.setTool(w.library.getTools().get(1));
            w.machine().getStanding().add(second);
        });
        rule("049", (w, bad) -> {
            w.standing().setHolder(w.library.getHolders().get(0));
            w.standing().setInsertPosition(bad ? 7 : 6);
        });
    }

    private static void toolShapes() {
        rule("050", (w, bad) -> {
            w.tool().setShape(ToolShape.RECTANGLE);
            w.tool().setWidthMm(bad ? 0 : 5);
        });
        rule("051", (w, bad) -> {
            w.tool().setShape(ToolShape.OBROUND);
            w.tool().setWidthMm(bad ? 10.5 : 9);
        });
        rule("052", (w, bad) -> {
            w.tool().setShape(ToolShape.SQUARE);
            w.tool().setCornerRadiusMm(bad ? 5.1 : 2);
        });
        rule("053", (w, bad) -> {
            w.tool().setShape(ToolShape.CORNER_RADIUS);
            w.tool().setCornerRadiusMm(bad ? 0 : 8);
        });
        rule("054", (w, bad) -> {
            w.tool().setShape(ToolShape.CLUSTER);
            for (int i = 0; i < (bad ? 1 : 2); i++) {
                ClusterPosition position = Samples.SHOP.createClusterPosition();
                position.setXMm(i == 0 ? -12 : 12);
                w.tool().getPositions().add(position);
            }
        });
        rule("055", (w, bad) -> {
            w.tool().setShape(ToolShape.FREE_CONTOUR);
            w.tool().setContourDrawing(bad ? "../leaf.dxf" : "drawings/leaf.dxf");
        });
        rule("056", (w, bad) -> {
            w.tool().setShape(ToolShape.COLLAR);
            w.tool().setFormDirection(FormDirection.UP);
            w.tool().setFormHeightMm(bad ? 0 : 3);
        });
        rule("057", (w, bad) -> w.tool().setFormHeightMm(bad ? 2 : 0));
        rule("058", (w, bad) -> {
            w.tool().setShearKind(ShearKind.ROOF);
            w.tool().setShearAngleDeg(bad ? 0 : 3);
        });
        rule("059", (w, bad) -> w.library.getTools().get(1).setLengthMm(bad ? 120 : 99));
        rule("060", (w, bad) -> {
            if (bad) {
                w.tool().getDieClearancesMm().clear();
            }
        });
        rule("061", (w, bad) -> w.tool().getDieClearancesMm().add(bad ? 0.4 : 0.5));
    }

    private static void toolState() {
        rule("062", (w, bad) -> {
            if (bad) {
                w.tool().getLives().clear();
            }
        });
        rule("063", (w, bad) -> {
            GroupLife life = Samples.SHOP.createGroupLife();
            life.setGroup(bad ? MaterialGroup.MILD_STEEL : MaterialGroup.BRASS);
            life.setHitsPerGrind(1000);
            w.tool().getLives().add(life);
        });
        rule("064", (w, bad) -> w.tool().setHitsSinceLastGrind(bad ? 60001 : 60000));
        rule("065", (w, bad) -> {
            w.tool().setGrindsLeft(0);
            w.tool().setHitsSinceLastGrind(60001);
            w.tool().setStatus(bad ? ItemStatus.IN_USE : ItemStatus.WORN);
        });
        rule("066", (w, bad) -> w.tool().setOnHand(bad ? 0 : 1));
        rule("067", (w, bad) -> w.tool().setPrice(bad ? 0 : 1));
        rule("068", (w, bad) -> w.tool().setResidualValue(bad ? 121 : 120));
        rule("069", (w, bad) -> w.tool().setLocation(bad ? "" : "B2"));
    }

    private static void holders() {
        rule("070", (w, bad) -> w.library.getHolders().get(0).setLargestInsertDiameterMm(bad ? 31 : 30));
        rule("071", (w, bad) -> w.library.getHolders().get(0).setOuterDiameterMm(bad ? 101 : 100));
    }

    private static void materials() {
        rule("080", (w, bad) -> w.material().setTensileMaxMPa(bad ? 269 : 330));
        rule("081", (w, bad) -> w.material().setShearStrengthMPa(bad ? 411 : 410));
        rule("082", (w, bad) -> w.material().setShearStrengthSource(bad ? null : "measured"));
        rule("083", (w, bad) -> w.material().setClearanceTotalPercent(bad ? 0.18 : 20));
        rule("084", (w, bad) -> {
            w.material().setClearanceRule(ClearanceRule.OEHLER_KAISER);
            w.material().setClearanceFactor(bad ? 0.1 : 0.01);
        });
        rule("085", (w, bad) -> w.material().setDensityKgPerDm3(bad ? 2.7 : 7.85));
        rule("086", (w, bad) -> w.material().setPriceDate(bad ? "2025-01-14" : "2025-01-15"));
        rule("087", (w, bad) -> w.material().setScrapValuePerKg(bad ? 1.2 : 1.1));
        rule("088", (w, bad) -> w.material().getThicknessesMm().add(bad ? 2.0 : 3.0));
        rule("089", (w, bad) -> w.material().setStandard(bad ? "" : "EN 10130"));
    }

    private static void stock() {
        rule("090", (w, bad) -> w.stock().setThicknessMm(bad ? 1.2 : 1.5));
        rule("091", (w, bad) -> w.machine().setMaxSheetMassKg(bad ? 36.7 : 36.9));
        rule("092", (w, bad) -> w.stock().setWidthMm(bad ? 1271 : 1270));
        rule("093", (w, bad) -> {
            w.material().setPricePerKg(0);
            w.stock().setPricePerPiece(bad ? 0 : 40);
        });
        rule("094", (w, bad) -> {
            w.stock().setOrderable(false);
            w.stock().setQuantity(bad ? 0 : 1);
        });
        rule("095", (w, bad) -> {
            w.stock().setRemnant(true);
            w.stock().setOrderable(bad);
        });
        rule("096", (w, bad) -> {
            w.stock().setKind(StockKind.BAR);
            w.stock().setLengthMm(bad ? 1200 : 1300);
        });
    }

    private static void parts() {
        rule("100", (w, bad) -> w.part.setThicknessMm(bad ? 1.2 : 2));
        rule("101", (w, bad) -> w.part.setThicknessMm(bad ? 6.5 : 6.4));
        rule("102", (w, bad) -> w.stock().setThicknessMm(bad ? 2 : 1.5));
        rule("103", (w, bad) -> {
            w.part.setGrain(GrainDemand.ALONG_X);
            w.stock().setGrain(bad ? Grain.UNKNOWN : Grain.ALONG_LENGTH);
        });
        rule("104", (w, bad) -> w.part.setNumber(bad ? "" : "1"));
        rule("105", (w, bad) -> form(w).setKind(bad ? ToolShape.SQUARE : ToolShape.LOUVRE));
        rule("106", (w, bad) -> form(w).setHeightMm(bad ? 0 : 2));
        rule("107", (w, bad) -> form(w).setCoreHoleMm(bad ? 5 : 4.2));
        rule("108", (w, bad) -> {
            SecondaryWork work = Samples.WORK.createSecondaryWork();
            work.setRate(w.library.getRates().getSecondary().get(0));
            work.setMinutesPerPiece(bad ? 0 : 1);
            w.part.getSecondary().add(work);
        });
        rule("120", (w, bad) -> {
            if (bad) {
                w.assembly.getItems().clear();
            }
        });
        rule("121", (w, bad) -> {
            AssemblyItem back = Samples.WORK.createAssemblyItem();
            back.setItem(bad ? w.assembly : w.part);
            w.assembly.getItems().add(back);
        });
    }

    private static PartForm form(World w) {
        PartForm form = Samples.WORK.createPartForm();
        form.setId("form-1");
        form.setKind(ToolShape.COLLAR);
        form.setLengthMm(5);
        form.setHeightMm(3);
        w.part.getForms().add(form);
        return form;
    }

    private static void shapes() {
        rule("109", (w, bad) -> {
            DrawnShape shape = Samples.WORK.createDrawnShape();
            shape.setDrawing(bad ? "C:/cover.dxf" : "drawings/cover.DXF");
            w.part.setShape(shape);
        });
        rule("110", (w, bad) -> w.plate().setCornerRadiusMm(bad ? 101 : 100));
        rule("111", (w, bad) -> flange(w).setBoltCircleDiameterMm(bad ? 111 : 80));
        rule("112", (w, bad) -> flange(w).setBoltCount(bad ? 28 : 27));
        rule("113", (w, bad) -> panel(w).setPitchMm(bad ? 5 : 8));
        rule("114", (w, bad) -> panel(w).setMarginYMm(bad ? 48 : 47));
        rule("115", (w, bad) -> {
            NotchedBracketShape shape = Samples.WORK.createNotchedBracketShape();
            shape.setLengthMm(100);
            shape.setWidthMm(60);
            shape.setNotchXMm(20);
            shape.setNotchYMm(bad ? 30 : 29);
            w.part.setShape(shape);
        });
    }

    /** Outer 120, bore 50, circle 80, hole 9: chord of 27 holes 80 sin(pi/27) = 9.29 mm, of 28 holes 8.96 mm. */
    private static FlangeShape flange(World w) {
        FlangeShape shape = Samples.WORK.createFlangeShape();
        shape.setOuterDiameterMm(120);
        shape.setBoreDiameterMm(50);
        shape.setBoltCircleDiameterMm(80);
        shape.setBoltHoleDiameterMm(9);
        shape.setBoltCount(4);
        w.part.setShape(shape);
        return shape;
    }

    private static PerforatedPanelShape panel(World w) {
        PerforatedPanelShape shape = Samples.WORK.createPerforatedPanelShape();
        shape.setLengthMm(200);
        shape.setWidthMm(100);
        shape.setHoleSizeMm(5);
        shape.setPitchMm(8);
        w.part.setShape(shape);
        return shape;
    }

    private static void holes() {
        rule("116", (w, bad) -> w.holes().setPitchXMm(bad ? 10 : 12));
        rule("117", (w, bad) -> w.holes().setPitchXMm(bad ? 138 : 137));
        rule("118", (w, bad) -> w.holes().setSizeMm(bad ? 1.4 : 1.5));
        rule("119", (w, bad) -> {
            w.holes().setShape(HoleShape.OBROUND);
            w.holes().setWidthMm(bad ? 12 : 6);
        });
    }

    private static void orders() {
        rule("130", (w, bad) -> {
            if (bad) {
                w.order.getLines().clear();
            }
        });
        rule("131", (w, bad) -> w.order.getLines().get(0).getLots().add(bad ? 0 : 1));
        rule("132", (w, bad) -> w.order.setDueDate(bad ? "2026-01-19" : "2026-01-20"));
        rule("133", (w, bad) -> w.part.setState(bad ? ItemState.WITHDRAWN : ItemState.RELEASED));
        rule("134", (w, bad) -> w.order.setNumber(bad ? null : "7"));
    }
}
