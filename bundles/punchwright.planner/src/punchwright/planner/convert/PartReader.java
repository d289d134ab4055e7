// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.FormContour;
import punchwright.engine.drawing.FormContours;
import punchwright.engine.drawing.Hole;
import punchwright.engine.drawing.HoleArrangement;
import punchwright.engine.drawing.ParametricParts;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.planning.FormDemand;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.PartWishes;
import punchwright.engine.tooling.ToolShape;
import punchwright.model.work.BusbarShape;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.FlangeShape;
import punchwright.model.work.GrainDemand;
import punchwright.model.work.HolePattern;
import punchwright.model.work.HoleShape;
import punchwright.model.work.NotchedBracketShape;
import punchwright.model.work.Part;
import punchwright.model.work.PartForm;
import punchwright.model.work.PartShape;
import punchwright.model.work.PerforatedPanelShape;
import punchwright.model.work.PlateShape;
import punchwright.model.work.RackPanelShape;
import punchwright.model.work.ToolWish;
import punchwright.model.work.WishKind;

/** Parts for the engine: their flat shape from a drawing or from parameters, forms, and the rotations that are allowed. */
public final class PartReader {

    private static final List<Double> ANY_QUARTER = List.of(0.0, 90.0);
    private static final List<Double> ALONG_X = List.of(0.0, 180.0);
    private static final List<Double> ALONG_Y = List.of(90.0, 270.0);

    private final DrawingStore drawings;
    private final Map<String, Shape> shapes = new LinkedHashMap<>();

    public PartReader(DrawingStore drawings) {
        this.drawings = drawings;
    }

    /**
     * A part in a number of pieces.
     *
     * @throws InputException when the part has no shape or material, or its drawing cannot be read
     */
    public PartDemand demand(Part part, int pieces) {
        if (part.getMaterial() == null || part.getMaterial().eIsProxy()) {
            throw new InputException(Finding.of(InputReason.PART_WITHOUT_MATERIAL, describe(part), describe(part)));
        }
        return new PartDemand(part.getId(), describe(part), withCoreHoles(shape(part), part), forms(part),
                MaterialReader.read(part.getMaterial()), part.getThicknessMm(), pieces, anglesDeg(part.getGrain()), wishes(part),
                drawnForms(part));
    }

    /** Grain of the part along the sheet's length, which is the rolling direction of a sheet in stock. */
    private static List<Double> anglesDeg(GrainDemand grain) {
        return grain == GrainDemand.ALONG_X ? ALONG_X : grain == GrainDemand.ALONG_Y ? ALONG_Y : ANY_QUARTER;
    }

    static String describe(Part part) {
        return part.getNumber() == null ? String.valueOf(part.getName()) : part.getNumber() + " " + part.getName();
    }

    /**
     * The flat shape of a part in mm.
     *
     * @throws InputException when it has none or cannot be read
     */
    public Shape shape(Part part) {
        Shape known = shapes.get(part.getId());
        if (known == null) {
            known = build(part);
            shapes.put(part.getId(), known);
        }
        return known;
    }

    /** The flat shape for pictures; null where the part has none that can be read. */
    public Shape shapeOrNull(Part part) {
        try {
            return shape(part);
        } catch (InputException e) {
            return null;
        }
    }

    /** What the reader noticed in the part's drawing. */
    public List<Finding> findings(Part part) {
        return part.getShape() instanceof DrawnShape drawn ? drawings.findings(drawn) : List.of();
    }

    private Shape build(Part part) {
        try {
            PartShape shape = part.getShape();
            if (shape instanceof DrawnShape drawn) {
                return drawings.shape(drawn, describe(part));
            }
            return byParameters(shape, describe(part));
        } catch (DrawingException e) {
            throw new InputException(e.finding());
        }
    }

    private static Shape byParameters(PartShape shape, String name) throws DrawingException {
        return switch (shape) {
            case PlateShape p -> ParametricParts.plate(name, p.getLengthMm(), p.getWidthMm(), p.getCornerRadiusMm(),
                    holes(p.getHoles()));
            case FlangeShape f -> ParametricParts.flange(name, f.getOuterDiameterMm(), f.getBoreDiameterMm(),
                    f.getBoltCircleDiameterMm(), f.getBoltCount(), f.getBoltHoleDiameterMm(), f.getBoltStartAngleDeg());
            case PerforatedPanelShape p -> ParametricParts.perforatedPanel(name, p.getLengthMm(), p.getWidthMm(),
                    hole(p.getHoleShape(), Point.ORIGIN, 0, p.getHoleSizeMm(), p.getHoleWidthMm()), p.getPitchMm(),
                    HoleArrangement.valueOf(p.getArrangement().getName()), p.getMarginXMm(), p.getMarginYMm());
            case NotchedBracketShape n -> ParametricParts.notchedBracket(name, n.getLengthMm(), n.getWidthMm(), n.getNotchXMm(),
                    n.getNotchYMm(), n.getNotchedCorners(), holes(n.getHoles()));
            case RackPanelShape r -> ParametricParts.rackPanel(name, r.getHeightUnits(), holes(r.getHoles()));
            case BusbarShape b -> ParametricParts.busbar(name, b.getLengthMm(), b.getWidthMm(), holes(b.getHoles()));
            case null, default -> throw new InputException(Finding.of(InputReason.PART_WITHOUT_SHAPE, name, name));
        };
    }

    private static List<Hole> holes(List<HolePattern> patterns) {
        List<Hole> holes = new ArrayList<>();
        for (HolePattern p : patterns) {
            for (int i = 0; i < p.getCountX(); i++) {
                for (int j = 0; j < p.getCountY(); j++) {
                    Point at = new Point(p.getXMm() + i * p.getPitchXMm(), p.getYMm() + j * p.getPitchYMm());
                    holes.add(hole(p.getShape(), at, p.getAngleDeg(), p.getSizeMm(), p.getWidthMm()));
                }
            }
        }
        return holes;
    }

    private static Hole hole(HoleShape shape, Point at, double angleDeg, double sizeMm, double widthMm) {
        return new Hole(Hole.Form.valueOf(shape.getName()), at, angleDeg, sizeMm, widthMm > 0 ? widthMm : sizeMm, 0);
    }

    /** The core holes of forms are punched before them; those that the shape shows already are its own. */
    private static Shape withCoreHoles(Shape shape, Part part) {
        List<Contour> holes = new ArrayList<>(shape.holes());
        for (PartForm f : part.getForms()) {
            Point at = new Point(f.getXMm(), f.getYMm());
            if (f.getCoreHoleMm() > 0 && holes.stream().noneMatch(h -> h.bounds().center().distance(at) < f.getLengthMm() / 2
                    || h.contains(at))) {
                holes.add(Contour.circle(at, f.getCoreHoleMm()));
            }
        }
        return holes.size() == shape.holes().size() ? shape : new Shape(shape.outer(), holes);
    }

    private static List<FormDemand> forms(Part part) {
        return part.getForms().stream().map(f -> new FormDemand(ToolShape.valueOf(f.getKind().getName()),
                new Point(f.getXMm(), f.getYMm()), f.getAngleDeg(), f.getLengthMm(), f.getWidthMm())).toList();
    }

    /** Forms that the part's drawing marks inside its outline. */
    private List<FormContour> drawnForms(Part part) {
        return part.getShape() instanceof DrawnShape drawn
                ? FormContours.within(shape(part), FormContours.of(drawings.drawing(drawn, describe(part)))) : List.of();
    }

    private static PartWishes wishes(Part part) {
        Set<String> forbidden = new TreeSet<>();
        List<PartWishes.Pin> pins = new ArrayList<>();
        for (ToolWish wish : part.getWishes()) {
            if (wish.getTool() == null || wish.getTool().eIsProxy()) {
                continue;
            }
            if (wish.getKind() == WishKind.FORBID) {
                forbidden.add(wish.getTool().getId());
            } else {
                kind(wish).ifPresent(k -> pins.add(new PartWishes.Pin(wish.getTool().getId(), wish.getTool().getName(), k,
                        new Point(wish.getXMm(), wish.getYMm()))));
            }
        }
        return new PartWishes(forbidden, pins);
    }

    private static Optional<FeatureKind> kind(ToolWish wish) {
        return Arrays.stream(FeatureKind.values()).filter(k -> k.name().equals(wish.getFeatureKind())).findFirst();
    }
}
