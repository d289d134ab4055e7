// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import punchwright.model.plan.PlanPackage;
import punchwright.model.shop.ShopPackage;
import punchwright.model.work.WorkPackage;

/** Bounds of single numbers as a table: class, then features. A number without a row may have any value. */
final class Bounds {

    /** What a bound demands. */
    enum Kind {
        ABOVE_ZERO,
        NOT_NEGATIVE,
        RANGE
    }

    private record Bound(EStructuralFeature feature, Kind kind, double lowest, double highest) {
    }

    private static final Map<String, List<Bound>> BY_CLASS = new TreeMap<>();

    static {
        shop();
        work();
        plan();
    }

    private Bounds() {
    }

    private static void shop() {
        positive("Machine", "throatDepthMm travelXMm travelYMm maxSpeedXMmPerS maxSpeedYMmPerS accelerationXMmPerS2 "
                + "accelerationYMmPerS2 "
                + "positioningAccuracyMm longestSheetMm minThicknessMm maxThicknessMm maxSheetMassKg pressForceKn strokeTimeS");
        notNegative("Machine", "settlingTimeS widestSheetMm turnSpeedDegPerS nibblingRatePerMin nibblingMaxPitchMm "
                + "repositionTimeS "
                + "turnOverTimeS loadTimeS unloadTimeS partRemovalTimeS slugOpeningMm dropLengthMm dropWidthMm "
                + "formClearanceUpMm formClearanceDownMm holdDownDiameterMm");
        positive("Place", "maxToolDiameterMm");
        notNegative("Place", "forceLimitKn turnAccuracyMm indexPosition");
        notNegative("ChangeTime", "timeS");
        positive("Clamps", "count maxCount widthMm depthMm");
        notNegative("Clamps", "deadZoneMm leastSpacingMm");
        positive("MachineRate", "lifeYears");
        notNegative("MachineRate", "purchaseValue replacementValue residualValue interestRatePercent spaceM2 "
                + "spaceRatePerM2Year powerKw "
                + "energyPricePerKwh maintenanceSharePercent");
        range("MachineRate", "hoursPerYear", 1, 8784);
        range("MachineRate", "loadFactorPercent", 0, 100);
        range("MachineRate", "occupancyPercent", 1, 100);
        range("MachineRate", "operatorSharePercent", 0, 400);
        positive("Tool", "lengthMm");
        notNegative("Tool", "widthMm cornerRadiusMm formHeightMm keepClearMm hitsPerForm dieRadiusMm bodyDiameterMm "
                + "forceLimitKn maxThicknessMm price "
                + "residualValue grindsLeft grindCost hitsSinceLastGrind onHand");
        range("Tool", "shearAngleDeg", 0, 10);
        range("Tool", "fixedAngleDeg", 0, 360);
        range("Standing", "angleDeg", 0, 360);
        positive("GroupLife", "hitsPerGrind");
        positive("MultiToolHolder", "largestInsertDiameterMm forceLimitKn outerDiameterMm");
        notNegative("MultiToolHolder", "indexTimeS price onHand");
        range("MultiToolHolder", "insertCount", 2, 50);
        positive("Material", "densityKgPerDm3 tensileMinMPa tensileMaxMPa shearStrengthMPa lifeFactor minimumHoleFactor");
        notNegative("Material", "pricePerKg scrapValuePerKg");
        positive("StockSheet", "lengthMm widthMm thicknessMm");
        notNegative("StockSheet", "pricePerPiece quantity");
        notNegative("Rates", "labourPerHour setUpPerHour programmingPerHour setUpBaseMinutes setUpMinutesPerTool "
                + "programmingMinutes "
                + "firstPieceCheckMinutes consumablesPerHour materialSurchargePercent productionSurchargePercent "
                + "adminSurchargePercent "
                + "salesSurchargePercent profitPercent holdingCostPercentPerYear sheetHandlingMinutes");
        positive("Rates", "remnantLeastLengthMm remnantLeastWidthMm");
        range("Rates", "scrapRatePercent", 0, 90);
        range("Rates", "remnantValuePercent", 0, 100);
        range("LayerRule", "colour", 0, 255);
        notNegative("SecondaryRate", "perHour setUpMinutes minutesPerPiece minutesPerUnit");
    }

    private static void work() {
        positive("Part", "thicknessMm");
        positive("PlateShape", "lengthMm widthMm");
        notNegative("PlateShape", "cornerRadiusMm");
        positive("FlangeShape", "outerDiameterMm");
        notNegative("FlangeShape", "boreDiameterMm boltCircleDiameterMm boltCount boltHoleDiameterMm");
        positive("PerforatedPanelShape", "lengthMm widthMm holeSizeMm pitchMm");
        notNegative("PerforatedPanelShape", "marginXMm marginYMm holeWidthMm");
        positive("NotchedBracketShape", "lengthMm widthMm");
        notNegative("NotchedBracketShape", "notchXMm notchYMm");
        range("NotchedBracketShape", "notchedCorners", 0, 4);
        positive("BusbarShape", "lengthMm widthMm");
        range("RackPanelShape", "heightUnits", 1, 12);
        positive("HolePattern", "sizeMm countX countY");
        notNegative("HolePattern", "widthMm");
        positive("PartForm", "lengthMm");
        notNegative("PartForm", "widthMm heightMm coreHoleMm");
        notNegative("SecondaryWork", "units minutesPerPiece");
        notNegative("PurchasedItem", "price");
        notNegative("Assembly", "joiningMinutes");
        positive("AssemblyItem", "quantity");
        positive("OrderLine", "quantity");
        positive("KeptLayout", "thicknessMm runs");
        notNegative("KeptLayout", "webMm");
    }

    private static void plan() {
        positive("SheetJob", "thicknessMm");
        positive("ToolUse", "balloon");
        notNegative("ToolUse", "insertPosition clearanceMm forceKn strippingKn hits lifeSharePercent");
        notNegative("Operation", "hitsPerPart forceKn strippingKn clearanceMm timeSPerPart");
        positive("Layout", "lengthMm widthMm runCount");
        range("Layout", "utilisationPercent", 0, 100);
        notNegative("Layout", "clampZoneMm webMm edgeWebMm cycleTimeS boundTimeS skeletonMassKg");
        positive("MicroJoint", "widthMm");
        notNegative("TimeShare", "seconds count");
        positive("LotCost", "quantity");
    }

    private static void positive(String type, String features) {
        for (String feature : features.split(" ")) {
            row(type, feature, Kind.ABOVE_ZERO, 0, 0);
        }
    }

    private static void notNegative(String type, String features) {
        for (String feature : features.split(" ")) {
            row(type, feature, Kind.NOT_NEGATIVE, 0, 0);
        }
    }

    private static void range(String type, String feature, double lowest, double highest) {
        row(type, feature, Kind.RANGE, lowest, highest);
    }

    private static void row(String type, String feature, Kind kind, double lowest, double highest) {
        EClass found = null;
        for (var where : List.of(ShopPackage.eINSTANCE, WorkPackage.eINSTANCE, PlanPackage.eINSTANCE)) {
            found = found == null ? (EClass) where.getEClassifier(type) : found;
        }
        EStructuralFeature bounded = found == null ? null : found.getEStructuralFeature(feature);
        if (bounded == null) {
            throw new IllegalStateException("The table of bounds names " + type + "." + feature
                    + ", which the model does not have");
        }
        BY_CLASS.computeIfAbsent(type, t -> new ArrayList<>()).add(new Bound(bounded, kind, lowest, highest));
    }

    /** Reports the numbers of an object that are out of their bounds of one kind. */
    static void check(EObject object, Kind kind, Report report) {
        for (Bound bound : BY_CLASS.getOrDefault(object.eClass().getName(), List.of())) {
            double value = ((Number) object.eGet(bound.feature)).doubleValue();
            if (bound.kind != kind || !Double.isFinite(value)) {
                continue;
            }
            String unit = GeneralRules.unit(bound.feature);
            switch (kind) {
                case ABOVE_ZERO -> reportIf(value <= 0, report, bound, value, unit);
                case NOT_NEGATIVE -> reportIf(value < 0, report, bound, value, unit);
                case RANGE -> reportIf(value < bound.lowest || value > bound.highest, report, bound, value, unit);
            }
        }
    }

    private static void reportIf(boolean broken, Report report, Bound bound, double value, String unit) {
        if (broken) {
            report.add(bound.feature, bound.feature, value, unit, bound.lowest, bound.highest);
        }
    }
}
