// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.library;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;

import punchwright.model.shop.ShopPackage;
import punchwright.ui.form.FieldGroup;
import punchwright.ui.form.Fields;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/**
 * The kinds of records that the shop keeps, each with its table and form as data. A column is "feature[:decimals] width".
 */
public enum ShopKind {
    /** Presses. */
    MACHINES("machines", Icons.MACHINE, List.of("name 190", "headKind 110", "pressForceKn:0 100", "travelXMm:0 100",
            "travelYMm:0 100", "maxThicknessMm:1 90 thickest", "longestSheetMm:0 90 longest", "status 80"), List.of(
                    new Group("group.general", "name", "id", "status", "headKind", "tableKind", "notes"),
                    new Group("group.axes", "travelXMm", "travelYMm", "maxSpeedXMmPerS", "maxSpeedYMmPerS",
                    "accelerationXMmPerS2", "accelerationYMmPerS2", "settlingTimeS", "positioningAccuracyMm"),
                    new Group("group.sheetLimits", "throatDepthMm", "longestSheetMm", "widestSheetMm", "maxSheetMassKg",
                    "minThicknessMm", "maxThicknessMm"),
                    new Group("group.ram", "pressForceKn", "strokeTimeS", "nibblingRatePerMin", "nibblingMaxPitchMm",
                    "turnSpeedDegPerS", "slugOpeningMm"),
                    new Group("group.clamps", "clamps.*"),
                    new Group("group.handling", "loadTimeS", "unloadTimeS", "repositionTimeS", "turnOverTimeS",
                    "partRemovalTimeS", "dropLengthMm", "dropWidthMm", "formClearanceUpMm", "formClearanceDownMm",
                    "holdDownDiameterMm"),
                    new Group("group.options", "options.*"), new Group("group.rate", "rate.*")), List.of(
                            new Children("places", "name 110", "indexPosition 70", "maxToolDiameterMm:1 110", "forceLimitKn:0 80",
                                    "turns 60", "accepts 150"),
                            new Children("standing", "place 110", "tool 170", "holder 120", "insertPosition 80", "angleDeg:1 70"),
                            new Children("changeTimes", "kind 160", "timeS:1 90"))),
    /** Punches with die and stripper. */
    TOOLS("tools", Icons.TOOL, List.of("name 180", "shape 110", "lengthMm:2 70 size", "widthMm:2 70", "dieClearancesMm 110 dies",
            "onHand 60", "grindsLeft 70 grinds", "hitsSinceLastGrind 80 hits", "location 90", "status 80"), List.of(
                    new Group("group.general", "name", "id", "status", "onHand", "location", "notes"),
                    new Group("group.shape", "shape", "angleFreedom", "lengthMm", "widthMm", "cornerRadiusMm", "fixedAngleDeg",
                            "bodyDiameterMm", "clusterShape", "contourDrawing"),
                    new Group("group.die", "dieClearancesMm", "stripper", "shearKind", "shearAngleDeg", "forceLimitKn",
                    "maxThicknessMm"), new Group("group.form", "formDirection", "formHeightMm", "keepClearMm",
                            "hitsPerForm", "dieRadiusMm"),
                    new Group("group.life", "price", "residualValue", "grindsLeft", "grindCost", "hitsSinceLastGrind")), List.of(
                            new Children("lives", "group 180", "hitsPerGrind 120"),
                            new Children("positions", "xMm:2 90", "yMm:2 90"))),
    /** Holders for several inserts. */
    HOLDERS("holders", Icons.HOLDER, List.of("name 180", "insertCount 80", "largestInsertDiameterMm:1 90 insert",
            "forceLimitKn:0 100", "insertsTurn 100", "outerDiameterMm:1 110", "onHand 70", "status 80"), List.of(
                    new Group("group.general", "name", "id", "status", "onHand", "price", "notes"),
                    new Group("group.inserts", "insertCount", "largestInsertDiameterMm", "outerDiameterMm", "forceLimitKn",
                    "indexTimeS", "insertsTurn")), List.of()),
    /** Grades. */
    MATERIALS("materials", Icons.MATERIAL, List.of("name 170", "grade 90", "standard 100", "group 120",
            "shearStrengthMPa:0 90 shear", "densityKgPerDm3:2 90", "pricePerKg:2 90", "thicknessesMm 150"), List.of(
                    new Group("group.general", "name", "id", "grade", "standard", "group", "densityKgPerDm3", "notes"),
                    new Group("group.strength", "tensileMinMPa", "tensileMaxMPa", "shearStrengthMPa", "shearStrengthSource"),
                    new Group("group.punching", "clearanceRule", "clearanceTotalPercent", "clearanceFactor", "minimumHoleFactor",
                            "lifeFactor"),
                    new Group("group.price", "pricePerKg", "priceDate", "scrapValuePerKg", "thicknessesMm")), List.of()),
    /** Sheets and bars. */
    STOCK("stock", Icons.STOCK, List.of("name 190", "material 150", "thicknessMm:2 90", "lengthMm:0 80", "widthMm:0 80",
            "quantity 80", "pricePerPiece:2 90", "remnant 80", "location 90"), List.of(
                    new Group("group.general", "name", "id", "material", "kind", "notes"),
                    new Group("group.size", "lengthMm", "widthMm", "thicknessMm", "grain", "faceProtected"),
                    new Group("group.onHand", "quantity", "orderable", "remnant", "pricePerPiece", "location")), List.of()),
    /** What layers of drawings mean, in the order in which they are asked. */
    LAYER_RULES("layerRules", Icons.DRAWING, List.of("name 170", "layerPatterns 200", "lineTypePatterns 130", "colour 60",
            "meaning 110"), List.of(new Group("group.general", "name", "id", "meaning", "notes"),
                    new Group("group.fits", "layerPatterns", "lineTypePatterns", "colour")), List.of()),
    /** What comes first on a sheet beyond the usual rules. */
    ORDER_RULES("orderRules", Icons.BALLOON, List.of("name 170", "firstWork 130", "firstTool 130", "laterWork 130",
            "laterTool 130", "reason 200"), List.of(new Group("group.general", "name", "id", "reason", "notes"),
                    new Group("group.order", "firstWork", "firstTool", "laterWork", "laterTool")), List.of());

    private record Group(String titleKey, List<String> names) {
        Group(String titleKey, String... names) {
            this(titleKey, List.of(names));
        }
    }

    /**
     * A list of contained objects below the form.
     *
     * @param feature containment reference
     * @param columns its columns
     */
    record Children(String feature, List<String> columns) {
        Children(String feature, String... columns) {
            this(feature, List.of(columns));
        }
    }

    private final String feature;
    private final Icons icon;
    private final List<String> columns;
    private final List<Group> groups;
    private final List<Children> children;

    ShopKind(String feature, Icons icon, List<String> columns, List<Group> groups, List<Children> children) {
        this.feature = feature;
        this.icon = icon;
        this.columns = columns;
        this.groups = groups;
        this.children = children;
    }

    /** The list in the library. */
    public EReference list() {
        return (EReference) Fields.feature(ShopPackage.Literals.LIBRARY, feature);
    }

    /** The class of its records. */
    public EClass type() {
        return list().getEReferenceType();
    }

    /** Its sign. */
    public Icons icon() {
        return icon;
    }

    /** Its name in the plural. */
    public String plural() {
        return Texts.of(list());
    }

    /** Whether the order of the records counts. */
    boolean ordered() {
        return this == LAYER_RULES;
    }

    String[] columns() {
        return columns.toArray(String[]::new);
    }

    /** The groups of fields of its form. */
    public List<FieldGroup> groups() {
        return groups.stream().map(g -> Fields.group(g.titleKey(), type(), g.names().toArray(String[]::new))).toList();
    }

    /** Names of the lists below its form. */
    public List<String> lists() {
        return children.stream().map(Children::feature).toList();
    }

    List<Children> children() {
        return children;
    }
}
