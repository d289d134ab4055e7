// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nester;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.ToolLoading;

/** Plans all sheets of one material and thickness; tries shared cuts first and webs with a skeleton strip next. */
final class SheetJobPlanner {

    /** Share of a sheet that boxes of parts usually cover; an estimate. */
    private static final double USUAL_USE = 0.75;

    private final PlanRequest request;
    private final List<PartDemand> demands;
    private final Material material;
    private final double thicknessMm;
    private final Progress progress;

    SheetJobPlanner(PlanRequest request, List<PartDemand> demands, Progress progress) {
        this.request = request;
        this.demands = demands;
        this.material = demands.get(0).material();
        this.thicknessMm = demands.get(0).thicknessMm();
        this.progress = progress;
    }

    static String describe(PartDemand d) {
        return String.format(Locale.ROOT, "%s %.2f mm", d.material().grade(), d.thicknessMm());
    }

    SheetJob plan() {
        List<Finding> early = outsideMachine();
        if (!early.isEmpty()) {
            return refused(List.of(), early);
        }
        progress.check();
        List<PartPlan> parts = new PartPlanner(request).plan(demands, request.readiness().over(sheets()));
        List<Finding> fromParts = partFindings(parts);
        if (fromParts.stream().anyMatch(Finding::isError)) {
            return refused(parts, fromParts);
        }
        return tryWebs(parts, fromParts);
    }

    private List<Finding> outsideMachine() {
        Machine m = request.machine();
        List<Finding> findings = new ArrayList<>();
        if (thicknessMm < m.minThicknessMm() - 1e-9 || thicknessMm > m.maxThicknessMm() + 1e-9) {
            findings.add(Finding.of(PlanningReason.THICKNESS, describe(demands.get(0)), thicknessMm, m.minThicknessMm(),
                    m.maxThicknessMm(), m.name(), material.grade()));
        }
        if (offers().isEmpty()) {
            findings.add(Finding.of(PlanningReason.NO_STOCK, describe(demands.get(0)), material.grade(), thicknessMm));
        }
        return findings;
    }

    private SheetJob refused(List<PartPlan> parts, List<Finding> findings) {
        return new SheetJob(material, thicknessMm, parts, new Nesting(List.of(), 0, 0, List.of()),
                new Loading(List.of(), List.of()), List.of(), 0, false, findings);
    }

    private static List<Finding> partFindings(List<PartPlan> parts) {
        List<Finding> all = new ArrayList<>();
        for (PartPlan p : parts) {
            all.addAll(p.features().findings());
            all.addAll(p.operations().findings());
        }
        return all;
    }

    /** The first attempt without errors; with none, the one with the fewest. */
    private SheetJob tryWebs(List<PartPlan> parts, List<Finding> fromParts) {
        Deque<Trial> trials = new ArrayDeque<>(new Trials(parts, thicknessMm, request.rules()).inOrder());
        SheetJob best = null;
        while (!trials.isEmpty()) {
            progress.check();
            Trial trial = trials.removeFirst();
            SheetJob job = attempt(parts, best == null ? fromParts : withNote(fromParts, best, trial), trial);
            if (job.errors() == 0) {
                return job;
            }
            if (!trial.oneDirection() && job.loading().findings().stream().anyMatch(Finding::isError)) {
                trials.addFirst(trial.inOneDirection());
            }
            best = best == null || job.errors() < best.errors() ? job : best;
        }
        return best;
    }

    private List<Finding> withNote(List<Finding> fromParts, SheetJob refused, Trial trial) {
        String first = refused.findings().stream().filter(Finding::isError).map(Finding::message).findFirst().orElse("");
        List<Finding> all = new ArrayList<>(fromParts);
        all.add(Finding.of(trial.oneDirection() ? PlanningReason.ONE_DIRECTION : PlanningReason.CUT_NOT_SHARED,
                describe(demands.get(0)), material.grade(), thicknessMm, trial.webMm(), first));
        return all;
    }

    private SheetJob attempt(List<PartPlan> parts, List<Finding> fromParts, Trial trial) {
        Nesting nesting = Nester.nest(nestingJob(parts, trial));
        List<Finding> findings = new ArrayList<>(fromParts);
        String sheets = describe(demands.get(0));
        nesting.findings().forEach(f -> findings.add(f.within(sheets)));
        Loading loading = ToolLoading.load(request.machine(), new ToolDemand(parts, nesting).usedTools(), request.holders(),
                request.rules().tooling().forceReserve(), request.readiness().over(runs(nesting)));
        loading.findings().forEach(f -> findings.add(f.within(sheets)));
        List<SheetRun> runs = new ArrayList<>();
        if (findings.stream().noneMatch(Finding::isError)) {
            SheetRunPlanner runPlanner = new SheetRunPlanner(request, material, thicknessMm, parts, loading);
            nesting.layouts().forEach(layout -> {
                progress.check();
                runs.add(runPlanner.plan(layout));
            });
            for (int i = 0; i < runs.size(); i++) {
                String layout = sheets + ", layout " + (i + 1);
                SheetRunPlanner.findings(runs.get(i)).forEach(f -> findings.add(f.within(layout)));
            }
        }
        return new SheetJob(material, thicknessMm, parts, nesting, loading, runs, trial.webMm(), trial.shared(), findings);
    }

    private NestingJob nestingJob(List<PartPlan> parts, Trial trial) {
        Machine m = request.machine();
        List<NestPart> nestParts = parts.stream().map(p -> new NestPart(p.demand().id(), p.demand().shape(),
                p.demand().quantity(), trial.anglesDeg(p.demand()), trial.webMm())).toList();
        double massPerMm2 = material.densityKgPerDm3() * 1e-6 * thicknessMm;
        double overrun = parts.stream().mapToDouble(p -> p.operations().overrunMm()).max().orElse(0);
        return new NestingJob(nestParts, offers(), Math.max(request.rules().edgeMm(), overrun + 2 * thicknessMm),
                clampStripMm(overrun), m.longestSheetMm(), m.throatDepthMm(), m.maxSheetMassKg(), massPerMm2,
                request.rules().workLimit(), request.rules().seed());
    }

    private double clampStripMm(double overrunMm) {
        Clamps c = request.machine().clamps();
        double own = request.rules().clampStripMm();
        return own > 0 ? own : c.depthMm() + c.deadZoneMm() + overrunMm;
    }

    /** Sheets that the parts will take, by the area of their boxes on the largest sheet; the layout is not known yet. */
    private double sheets() {
        double largest = offers().stream().mapToDouble(o -> o.lengthMm() * o.widthMm()).max().orElse(1);
        double boxes = demands.stream().mapToDouble(d -> d.quantity() * d.shape().outer().bounds().width()
                * d.shape().outer().bounds().height()).sum();
        return Math.ceil(boxes / (USUAL_USE * largest));
    }

    private static double runs(Nesting nesting) {
        return nesting.layouts().stream().mapToDouble(l -> l.runs()).sum();
    }

    private List<SheetOffer> offers() {
        return request.stock().stream()
                .filter(g -> g.materialId().equals(material.id()) && Math.abs(g.thicknessMm() - thicknessMm) < 1e-6)
                .flatMap(g -> g.offers().stream()).toList();
    }
}
