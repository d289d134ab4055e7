// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.LayoutFigures;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nester;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.Watch;
import punchwright.engine.nesting.check.LayoutCheck;

/** Layouts that a person arranged, as they are, and beside them layouts of the program for the pieces they do not make. */
final class KeptNesting {

    private final NestingJob job;
    private final List<KeptSheet> kept;
    private final Watch watch;

    KeptNesting(NestingJob job, List<KeptSheet> kept, Watch watch) {
        this.job = job;
        this.kept = kept;
        this.watch = watch;
    }

    /** All layouts, those kept first; each piece under the id of its part. */
    Nesting nest() {
        Nesting all = kept.isEmpty() ? Nester.nest(job, watch) : withKept();
        return new Nesting(all.layouts().stream().map(NestingInput::byPart).toList(), all.remnants(), all.utilisation(),
                all.cost(), all.boundMm2(), all.boundCost(), all.findings());
    }

    private Nesting withKept() {
        NestingJob rest = rest();
        Nesting made = rest.parts().isEmpty() ? new Nesting(List.of(), 0, 0, List.of()) : Nester.nest(rest, watch);
        List<Layout> layouts = new ArrayList<>(kept.stream().map(this::known).toList());
        made.layouts().forEach(l -> layouts.add(new Layout(offer(l.sheet().id()), l.placements(), l.runs())));
        Nesting all = LayoutFigures.of(job, layouts);
        List<Finding> findings = new ArrayList<>(made.findings().stream().filter(Finding::isError).toList());
        findings.addAll(all.findings());
        return new Nesting(all.layouts(), all.remnants(), all.utilisation(), all.cost(), all.boundMm2(), all.boundCost(),
                findings);
    }

    /** The layout without pieces of parts that nobody asks for: they are an error, and have no figures. */
    private Layout known(KeptSheet sheet) {
        Layout l = sheet.layout();
        return new Layout(l.sheet(), l.placements().stream()
                .filter(p -> job.parts().stream().anyMatch(part -> part.id().equals(p.partId()))).toList(), l.runs());
    }

    /** The sheet with all that is on hand of it. */
    private SheetOffer offer(String id) {
        return job.offers().stream().filter(o -> o.id().equals(id)).findFirst().orElseThrow();
    }

    /** The job less what the kept layouts make and take. */
    private NestingJob rest() {
        Map<String, Integer> made = new LinkedHashMap<>();
        Map<String, Integer> taken = new LinkedHashMap<>();
        for (KeptSheet k : kept) {
            k.layout().placements().forEach(p -> made.merge(p.partId(), k.layout().runs(), Integer::sum));
            taken.merge(k.layout().sheet().id(), k.layout().runs(), Integer::sum);
        }
        List<NestPart> parts = new ArrayList<>();
        for (NestPart p : job.parts()) {
            String id = NestingInput.partOf(p.id());
            int done = Math.min(p.quantity(), made.getOrDefault(id, 0));
            made.merge(id, -done, Integer::sum);
            if (done < p.quantity()) {
                parts.add(new NestPart(p.id(), p.shape(), p.quantity() - done, p.anglesDeg(), p.webMm(), p.want(),
                        p.pieceValue(), p.openings()));
            }
        }
        List<SheetOffer> offers = job.offers().stream().map(o -> new SheetOffer(o.id(), o.lengthMm(), o.widthMm(), o.price(),
                Math.max(0, o.quantity() - taken.getOrDefault(o.id(), 0)), o.remnant(), o.bar())).toList();
        return job.withParts(parts).withOffers(offers);
    }

    /** What the independent check says of the kept layouts, each an error with the way out. */
    List<Finding> failures() {
        List<Finding> failures = new ArrayList<>();
        for (KeptSheet k : kept) {
            LayoutCheck.of(job, k.layout()).stream().limit(1).forEach(f -> failures.add(
                    Finding.of(PlanningReason.KEPT_LAYOUT, k.name(), k.name(), f.subject(), f.message())));
            if (job.offers().stream().noneMatch(o -> o.id().equals(k.layout().sheet().id()))) {
                failures.add(Finding.of(PlanningReason.KEPT_STOCK, k.name(), k.name(), k.layout().sheet().id()));
            }
        }
        return failures;
    }
}
