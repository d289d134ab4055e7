// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.NestingReason;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.Want;

/** Pieces made against pieces wanted, sheets used against stock and machine. */
final class CountCheck {

    private final NestingJob job;
    private final Nesting nesting;
    private final List<Finding> findings;

    CountCheck(NestingJob job, Nesting nesting, List<Finding> findings) {
        this.job = job;
        this.nesting = nesting;
        this.findings = findings;
    }

    void check() {
        pieces();
        stock();
    }

    private void pieces() {
        Map<String, Integer> made = new LinkedHashMap<>();
        for (int i = 0; i < nesting.layouts().size(); i++) {
            Layout layout = nesting.layouts().get(i);
            if (layout.runs() < 1 || layout.placements().isEmpty()) {
                findings.add(Finding.of(LayoutReason.EMPTY, "layout " + (i + 1), layout.runs(), layout.placements().size()));
            }
            layout.placements().forEach(p -> made.merge(p.partId(), layout.runs(), Integer::sum));
        }
        Map<String, Integer> missing = stated();
        for (NestPart part : job.parts()) {
            int count = made.getOrDefault(part.id(), 0);
            int least = part.want() == Want.MUST ? part.quantity() - missing.getOrDefault(part.id(), 0) : 0;
            int most = part.want() == Want.MUST ? least : part.quantity();
            if (count < least || count > most) {
                findings.add(Finding.of(LayoutReason.COUNT, "part " + part.id(), part.id(), count, least, most));
            }
        }
    }

    /** Missing pieces by the findings of the nesting. */
    private Map<String, Integer> stated() {
        Map<String, Integer> missing = new LinkedHashMap<>();
        for (Finding f : nesting.findings()) {
            if (f.reason() == NestingReason.STOCK_SHORT) {
                missing.put((String) f.arguments().get(2), (Integer) f.arguments().get(0));
            } else if (f.reason() == NestingReason.PART_TOO_LARGE) {
                job.parts().stream().filter(p -> p.id().equals(f.arguments().get(0)))
                        .forEach(p -> missing.put(p.id(), p.quantity()));
            } else if (f.reason() == NestingReason.NO_SHEET) {
                job.parts().forEach(p -> missing.put(p.id(), p.quantity()));
            }
        }
        return missing;
    }

    private void stock() {
        Map<SheetOffer, Integer> used = new LinkedHashMap<>();
        nesting.layouts().forEach(l -> used.merge(l.sheet(), l.runs(), Integer::sum));
        used.forEach((sheet, count) -> {
            int onHand = job.offers().contains(sheet) ? sheet.quantity() : 0;
            if (count > onHand) {
                findings.add(Finding.of(LayoutReason.STOCK, "sheet " + sheet.id(), sheet.id(), count, onHand));
            }
            double mass = sheet.areaMm2() * job.massPerMm2Kg();
            if (sheet.lengthMm() > job.limits().maxLengthMm() || sheet.widthMm() > job.limits().maxWidthMm()
                    || mass > job.limits().maxMassKg()) {
                findings.add(Finding.of(LayoutReason.MACHINE, "sheet " + sheet.id(), sheet.id(), sheet.lengthMm(),
                        sheet.widthMm(), mass, job.limits().maxLengthMm(), job.limits().maxWidthMm(),
                        job.limits().maxMassKg()));
            }
        });
    }
}
