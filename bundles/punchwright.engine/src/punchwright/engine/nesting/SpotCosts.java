// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Pose;

/** What sheets with parts in any place cost, less remnants and scrap; and, net, with machine time and the value of options. */
final class SpotCosts {

    private record Key(int part, double angleDeg) {
    }

    private final Stock stock;
    private final List<BoxPart> parts;
    private final Map<Key, Bounds> boxes = new HashMap<>();

    SpotCosts(Stock stock, List<BoxPart> parts) {
        this.stock = stock;
        this.parts = parts;
    }

    /** Box of a part on the sheet. */
    Bounds box(Spot s) {
        Bounds b = boxes.computeIfAbsent(new Key(s.part(), s.pose().angleDeg()), k -> parts.get(k.part).part().shape().outer()
                .moved(Pose.at(0, 0, k.angleDeg)).bounds());
        double x = s.pose().x();
        double y = s.pose().y();
        return new Bounds(b.minX() + x, b.minY() + y, b.maxX() + x, b.maxY() + y);
    }

    List<Bounds> boxes(SpotSheet sheet) {
        List<Bounds> out = new ArrayList<>();
        sheet.spots().forEach(s -> out.add(box(s)));
        return out;
    }

    /** Sheets with handling, less remnants and scrap. */
    double of(List<SpotSheet> sheets) {
        double sum = 0;
        for (SpotSheet s : sheets) {
            sum += s.runs() * of(s);
        }
        return sum;
    }

    /** One run of a sheet. */
    double of(SpotSheet sheet) {
        double toX = 0;
        double toY = 0;
        for (Spot s : sheet.spots()) {
            toX = Math.max(toX, box(s).maxX());
            toY = Math.max(toY, box(s).maxY());
        }
        return stock.costs().of(stock.offer(sheet.offer()), sheet.partAreaMm2(parts), toX, toY);
    }

    /** Machine time that cuts save which neighbours share. */
    double shared(List<SpotSheet> sheets) {
        NestingCosts c = stock.costs().job().costs();
        double sum = 0;
        for (SpotSheet s : c.sharedCutMm() > 0 && c.perMmCut() > 0 ? sheets : List.<SpotSheet>of()) {
            sum += s.runs() * c.perMmCut() * SharedEdges.lengthMm(s.spots().stream().map(p -> parts.get(p.part()).part().shape()
                    .outer().moved(p.pose())).toList(), c.sharedCutMm());
        }
        return sum;
    }

    /** With machine time, less the value of the pieces that need not be made. */
    double net(List<SpotSheet> sheets) {
        double sum = of(sheets) - shared(sheets);
        for (SpotSheet s : sheets) {
            for (Spot spot : s.spots()) {
                sum -= s.runs() * worth(spot.part());
            }
        }
        return sum;
    }

    /** Value of a piece that need not be made less its machine time; of a must, the machine time alone. */
    double worth(int part) {
        NestPart p = parts.get(part).part();
        return (p.want() == Want.MUST ? 0 : p.pieceValue()) - LowerBounds.machine(stock, parts.get(part));
    }
}
