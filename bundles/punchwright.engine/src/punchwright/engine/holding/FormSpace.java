// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.distance.DistanceOp;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.press.FormingRules;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolShape;

/**
 * The room around the forms of a sheet: which later hits would come too near to a form that stands. Measured from edge to edge
 * by {@link FormingRules#keepClearMm}, between forms of one tool by {@link FormingRules#toOwnNeighbourMm} where that is less;
 * and where the record gives the later tool's body, that body must not come down on the form. Marks keep nothing clear.
 */
public final class FormSpace {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final double CHORD_MM = 0.002;
    private static final double SAME_MM = 1e-3;
    private static final double TOUCH_MM = 1e-6;

    private record Posed(String tool, double angleDeg) {
    }

    /** Circles are a point with a radius, all else polygons. */
    private record Shape(Geometry area, double radiusMm, Bounds box) {
    }

    private final double thicknessMm;
    private final List<SheetHit> forms;
    private final BoxIndex index;
    private final double widestMm;
    private final Map<Posed, Shape> shapes = new HashMap<>();

    /** @param hits  of the sheet, forms among them */
    public FormSpace(List<SheetHit> hits, double thicknessMm) {
        this.thicknessMm = thicknessMm;
        forms = hits.stream().filter(h -> h.role() == HitRole.FORM && h.use().tool().shape() != ToolShape.MARKING).toList();
        index = new BoxIndex(forms.stream().map(this::box).toList());
        widestMm = forms.stream().mapToDouble(f -> keepMm(f.use().tool())).max().orElse(0);
    }

    /** Forms that keep room clear, in the order of the hits. */
    public List<SheetHit> forms() {
        return forms;
    }

    /** The forms that the hit comes too near to if they stand already, in the order of the hits. */
    public List<TooNear> around(SheetHit later) {
        if (forms.isEmpty()) {
            return List.of();
        }
        List<Integer> found = new ArrayList<>();
        double grown = Math.max(widestMm, later.use().tool().room().bodyMm() / 2);
        index.query(box(later).grown(grown), found::add);
        List<TooNear> near = new ArrayList<>();
        for (int i : found.stream().sorted().toList()) {
            TooNear n = between(forms.get(i), later);
            if (n != null) {
                near.add(n);
            }
        }
        return near;
    }

    /** Null where the later hit may come; the same form hit again is one form in several hits. */
    private TooNear between(SheetHit form, SheetHit later) {
        Tool a = form.use().tool();
        Tool b = later.use().tool();
        boolean same = a.id().equals(b.id());
        if (form == later || same && form.operation() == later.operation() && form.placement() == later.placement()
                || same && form.at().distance(later.at()) < SAME_MM) {
            return null;
        }
        double least = same ? Math.min(keepMm(a), FormingRules.toOwnNeighbourMm(thicknessMm)) : keepMm(a);
        double gap = gapMm(form, later);
        if (gap < least - TOUCH_MM) {
            return new TooNear(form, later, gap, least);
        }
        double body = b.room().bodyMm() / 2;
        double toAxis = body > 0 && a.standsMm() != 0 && !same ? toAxisMm(form, later.at()) : body;
        return toAxis < body - TOUCH_MM ? new TooNear(form, later, toAxis, body) : null;
    }

    private double keepMm(Tool form) {
        return FormingRules.keepClearMm(form.room().keepClearMm(), form.room().bodyMm(),
                Math.max(form.lengthMm(), form.widthMm()) / 2, thicknessMm);
    }

    /** Edge to edge, mm; 0 where they meet. */
    double gapMm(SheetHit a, SheetHit b) {
        Geometry moved = AffineTransformation.translationInstance(b.at().x() - a.at().x(), b.at().y() - a.at().y())
                .transform(shape(b).area);
        return Math.max(0, DistanceOp.distance(shape(a).area, moved) - shape(a).radiusMm - shape(b).radiusMm);
    }

    private double toAxisMm(SheetHit form, Point axis) {
        Geometry at = FACTORY.createPoint(new Coordinate(axis.x() - form.at().x(), axis.y() - form.at().y()));
        return Math.max(0, shape(form).area.distance(at) - shape(form).radiusMm);
    }

    private Bounds box(SheetHit h) {
        Bounds b = shape(h).box;
        return new Bounds(b.minX() + h.at().x(), b.minY() + h.at().y(), b.maxX() + h.at().x(), b.maxY() + h.at().y());
    }

    private Shape shape(SheetHit h) {
        return shapes.computeIfAbsent(new Posed(h.use().tool().id(), h.angleDeg()), k -> {
            Tool tool = h.use().tool();
            if (tool.shape() == ToolShape.ROUND || tool.shape().forms() && Math.abs(tool.lengthMm() - tool.widthMm()) < 1e-9) {
                double r = tool.lengthMm() / 2;
                return new Shape(FACTORY.createPoint(new Coordinate(0, 0)), r, new Bounds(-r, -r, r, r));
            }
            return polygons(tool, h.angleDeg());
        });
    }

    private static Shape polygons(Tool tool, double angleDeg) {
        List<Geometry> areas = new ArrayList<>();
        Bounds box = Bounds.EMPTY;
        for (Contour c : ToolFootprint.of(tool)) {
            Contour turned = c.moved(Pose.at(0, 0, angleDeg));
            box = box.including(turned.bounds());
            areas.add(polygon(Flattening.points(turned, CHORD_MM)));
        }
        return new Shape(areas.size() == 1 ? areas.getFirst() : FACTORY.buildGeometry(areas), 0, box);
    }

    private static Geometry polygon(List<Point> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < points.size(); i++) {
            ring[i] = new Coordinate(points.get(i).x(), points.get(i).y());
        }
        ring[points.size()] = ring[0].copy();
        return FACTORY.createPolygon(ring);
    }
}
