// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.Margins;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Placement;
import punchwright.engine.nesting.SearchLimits;
import punchwright.engine.nesting.SheetLimits;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.Want;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.Machine;

/** What the layout stage is asked for one sheet job: parts with their webs, stock, margins and costs. */
final class NestingInput {

    /** Share of a sheet that boxes of parts usually cover; an estimate. */
    static final double USUAL_USE = 0.75;
    /** Stands in ids between a part and the want of pieces that need not be made. */
    private static final String OPTIONAL = "~";

    private final PlanRequest request;
    private final List<PartDemand> demands;

    NestingInput(PlanRequest request, List<PartDemand> demands) {
        this.request = request;
        this.demands = demands;
    }

    /** The sheets in stock of the job's material and thickness. */
    List<SheetOffer> offers() {
        return groups().stream().flatMap(g -> g.offers().stream()).toList();
    }

    private List<StockGroup> groups() {
        PartDemand first = demands.get(0);
        return request.stock().stream().filter(g -> g.materialId().equals(first.material().id())
                && Math.abs(g.thicknessMm() - first.thicknessMm()) < 1e-6).toList();
    }

    /** Layouts of the job that a person arranged. */
    List<KeptSheet> kept() {
        PartDemand first = demands.get(0);
        return request.kept().stream().filter(k -> k.materialId().equals(first.material().id())
                && Math.abs(k.thicknessMm() - first.thicknessMm()) < 1e-6).toList();
    }

    NestingJob job(List<PartPlan> parts, Trial trial) {
        Machine m = request.machine();
        PartDemand first = demands.get(0);
        List<NestPart> nestParts = new ArrayList<>();
        parts.forEach(p -> nestParts.addAll(pieces(p.demand(), trial)));
        double overrun = parts.stream().mapToDouble(p -> p.operations().overrunMm()).max().orElse(0);
        Margins margins = new Margins(Math.max(request.rules().edgeMm(), overrun + 2 * first.thicknessMm()),
                clampStripMm(overrun));
        NestingCosts costs = groups().stream().map(StockGroup::costs).findFirst().orElse(NestingCosts.SHEETS_ONLY)
                .sharing(trial.shared() ? trial.webMm() : 0);
        return new NestingJob(nestParts, offers(), margins,
                new SheetLimits(m.longestSheetMm(), m.throatDepthMm(), m.maxSheetMassKg()),
                first.material().densityKgPerDm3() * 1e-6 * first.thicknessMm(), costs,
                new SearchLimits(request.rules().workLimit(), request.rules().seed(), trial.outlines()));
    }

    /** The pieces that must be made under the part's own id, those of another want beside them. */
    private List<NestPart> pieces(PartDemand d, Trial trial) {
        List<NestPart> pieces = new ArrayList<>();
        List<Double> angles = trial.anglesDeg(d);
        if (d.quantity() > 0) {
            pieces.add(new NestPart(d.id(), d.shape(), d.quantity(), angles, trial.webMm()));
        }
        for (OptionalPieces o : d.optional()) {
            String id = pieces.isEmpty() ? d.id() : d.id() + OPTIONAL + o.want();
            pieces.add(new NestPart(id, d.shape(), o.quantity(), angles, trial.webMm(), o.want(), value(d, o.want())));
        }
        return pieces;
    }

    /** What the sheet for a piece costs when it is made another time: its box at the least price of an area, usual use. */
    private double value(PartDemand d, Want want) {
        Bounds b = d.shape().outer().bounds();
        double least = offers().stream().mapToDouble(o -> o.price() / o.areaMm2()).min().orElse(0);
        return want == Want.MUST ? 0 : b.width() * b.height() * least / USUAL_USE;
    }

    /** The layout with each piece under the id of its part, whatever its want. */
    static Layout byPart(Layout layout) {
        return new Layout(layout.sheet(), layout.placements().stream()
                .map(p -> new Placement(partOf(p.partId()), p.pose())).toList(), layout.runs());
    }

    /** The id of the part that a piece is of. */
    static String partOf(String pieceId) {
        for (Want want : Want.values()) {
            if (pieceId.endsWith(OPTIONAL + want)) {
                return pieceId.substring(0, pieceId.length() - OPTIONAL.length() - want.name().length());
            }
        }
        return pieceId;
    }

    private double clampStripMm(double overrunMm) {
        Clamps c = request.machine().clamps();
        double own = request.rules().clampStripMm();
        return own > 0 ? own : c.depthMm() + c.deadZoneMm() + overrunMm;
    }

    /** Sheets that the parts will take, by the area of their boxes on the largest sheet; the layout is not known yet. */
    double sheets() {
        double largest = offers().stream().mapToDouble(SheetOffer::areaMm2).max().orElse(1);
        double boxes = demands.stream().mapToDouble(d -> d.mostPieces() * d.shape().outer().bounds().width()
                * d.shape().outer().bounds().height()).sum();
        return Math.ceil(boxes / (USUAL_USE * largest));
    }
}
