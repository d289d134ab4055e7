// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Pose;

/** Makes the result of a job out of filled sheets: layouts with runs, remnants, cost, bounds and findings. */
final class Assembly {

    private final NestingJob job;
    private final Stock stock;
    private final List<BoxPart> parts;
    private final Map<String, NestPart> byId = new LinkedHashMap<>();
    private final FreeRests rests;
    private final Map<BoundKey, Bounds> boxes = new LinkedHashMap<>();

    private record BoundKey(String part, double angleDeg) {
    }

    Assembly(NestingJob job, Stock stock, List<BoxPart> parts) {
        this.job = job;
        this.stock = stock;
        this.parts = parts;
        this.rests = new FreeRests(job);
        job.parts().forEach(p -> byId.put(p.id(), p));
    }

    Nesting nesting(List<SpotSheet> sheets, double boundMm2, double boundCost, List<Finding> known) {
        return measured(layouts(sheets), boundMm2, boundCost, known);
    }

    /** The result for layouts that are there already. */
    Nesting measured(List<Layout> layouts, double boundMm2, double boundCost, List<Finding> known) {
        List<Remnant> remnants = remnants(layouts);
        List<Finding> findings = new ArrayList<>(known);
        for (Remnant r : remnants) {
            findings.add(Finding.of(NestingReason.REMNANT_LEFT, "layout " + (r.layout() + 1), r.layout() + 1, r.lengthMm(),
                    r.widthMm(), layouts.get(r.layout()).sheet().id()));
        }
        double sheetMm2 = layouts.stream().mapToDouble(l -> l.runs() * l.sheet().areaMm2()).sum();
        double partMm2 = layouts.stream().mapToDouble(l -> l.runs() * partMm2(l)).sum();
        return new Nesting(layouts, remnants, sheetMm2 == 0 ? 0 : partMm2 / sheetMm2, cost(layouts, remnants), boundMm2,
                boundCost, findings);
    }

    private double partMm2(Layout layout) {
        return layout.placements().stream().mapToDouble(p -> byId.get(p.partId()).shape().areaMm2()).sum();
    }

    /** Remnants first; layouts that are the same are one with the runs added. */
    private List<Layout> layouts(List<SpotSheet> sheets) {
        Map<List<Object>, Layout> merged = new LinkedHashMap<>();
        for (boolean remnant : new boolean[] {true, false}) {
            for (SpotSheet s : sheets) {
                if (stock.offer(s.offer()).remnant() == remnant) {
                    Layout layout = layout(s);
                    merged.merge(List.of(layout.sheet(), layout.placements()), layout,
                            (a, b) -> new Layout(a.sheet(), a.placements(), a.runs() + b.runs()));
                }
            }
        }
        return List.copyOf(merged.values());
    }

    private Layout layout(SpotSheet s) {
        return new Layout(stock.offer(s.offer()), s.spots().stream()
                .map(p -> new Placement(parts.get(p.part()).part().id(), p.pose())).toList(), s.runs());
    }

    private List<Remnant> remnants(List<Layout> layouts) {
        List<Remnant> out = new ArrayList<>();
        for (int i = 0; i < layouts.size(); i++) {
            SheetOffer sheet = layouts.get(i).sheet();
            for (Bounds r : rests.of(sheet, layouts.get(i).placements().stream().map(this::box).toList())) {
                out.add(new Remnant(i, r.minX(), r.minY(), r.width(), r.height(),
                        job.costs().remnantValue(sheet, r.width() * r.height())));
            }
        }
        return out;
    }

    private Bounds box(Placement p) {
        Bounds b = boxes.computeIfAbsent(new BoundKey(p.partId(), p.pose().angleDeg()),
                k -> byId.get(k.part).shape().outer().moved(Pose.at(0, 0, k.angleDeg)).bounds());
        return new Bounds(b.minX() + p.pose().x(), b.minY() + p.pose().y(), b.maxX() + p.pose().x(), b.maxY() + p.pose().y());
    }

    private NestingCost cost(List<Layout> layouts, List<Remnant> remnants) {
        NestingCosts costs = job.costs();
        double material = 0;
        double handling = 0;
        double machine = 0;
        double optional = 0;
        double scrapMm2 = 0;
        for (Layout l : layouts) {
            material += l.runs() * l.sheet().price();
            handling += l.runs() * costs.handlingPerSheet();
            scrapMm2 += l.runs() * (l.sheet().areaMm2() - partMm2(l));
            machine -= l.runs() * sharedMachine(l);
            for (Placement p : l.placements()) {
                NestPart part = byId.get(p.partId());
                machine += l.runs() * costs.perMmCut() * part.shape().cutLengthMm();
                optional += part.want() == Want.MUST ? 0 : l.runs() * part.pieceValue();
            }
        }
        double kept = 0;
        for (Remnant r : remnants) {
            int runs = layouts.get(r.layout()).runs();
            kept += runs * r.value();
            scrapMm2 -= runs * r.areaMm2();
        }
        return new NestingCost(material, kept, Math.max(0, scrapMm2) * job.massPerMm2Kg() * costs.scrapPerKg(), handling, machine,
                optional);
    }

    /** Machine time that cuts save which neighbours share, money. */
    private double sharedMachine(Layout l) {
        NestingCosts costs = job.costs();
        return costs.sharedCutMm() <= 0 || costs.perMmCut() <= 0 ? 0 : costs.perMmCut() * SharedEdges.lengthMm(l.placements()
                .stream().map(p -> byId.get(p.partId()).shape().outer().moved(p.pose())).toList(), costs.sharedCutMm());
    }
}
