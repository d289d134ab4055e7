// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.ToolLoading;

/** Plans all sheets of one material and thickness; tries shared cuts first and webs with a skeleton strip next. */
final class SheetJobPlanner {

    /** Parts that fill more than this share of their box are laid out by it alone. */
    private static final double FULL_BOX = 0.98;
    /** Share of the cost that outlines must save before they are worked out and proven. */
    private static final double LEAST_GAIN = 0.01;

    private final PlanRequest request;
    private final List<PartDemand> demands;
    private final Material material;
    private final double thicknessMm;
    private final Progress progress;
    private final NestingInput input;

    SheetJobPlanner(PlanRequest request, List<PartDemand> demands, Progress progress) {
        this.request = request;
        this.demands = demands;
        this.material = demands.get(0).material();
        this.thicknessMm = demands.get(0).thicknessMm();
        this.progress = progress;
        this.input = new NestingInput(request, demands);
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
        List<PartPlan> parts = parts();
        List<Finding> fromParts = partFindings(parts);
        if (fromParts.stream().noneMatch(Finding::isError)) {
            fromParts.addAll(kept(parts, trials(parts).getFirst()).failures());
        }
        if (fromParts.stream().anyMatch(Finding::isError)) {
            return refused(parts, fromParts);
        }
        return tryWebs(parts, fromParts);
    }

    /**
     * Layouts only: tools are chosen for their webs, nothing is proven.
     *
     * @param webMm web between neighbours; 0 for the least that no hit beside a part reaches beyond
     * @param nest  whether sheets are filled; else the layouts are empty and the rest tells what would be asked
     */
    SheetLayouts layouts(double webMm, boolean nest) {
        List<Finding> early = outsideMachine();
        if (!early.isEmpty()) {
            return new SheetLayouts(material, thicknessMm, null, List.of(), new Nesting(List.of(), 0, 0, List.of()), early);
        }
        progress.check();
        List<PartPlan> parts = parts();
        List<Finding> findings = new ArrayList<>(partFindings(parts));
        List<Trial> trials = trials(parts);
        Trial trial = webMm > 0 ? new Trial(webMm, false, false) : usual(parts, trials);
        KeptNesting kept = kept(parts, trial);
        findings.addAll(kept.failures());
        Nesting boxes = nest ? kept.nest() : new Nesting(List.of(), 0, 0, List.of());
        Nesting outlines = nest ? outlines(parts, trial, boxes) : boxes;
        boolean byOutlines = !nest || cheaper(outlines, boxes);
        Nesting nesting = byOutlines ? outlines : boxes;
        findings.addAll(nesting.findings());
        String sheets = describe(demands.get(0));
        NestingJob job = input.job(parts, byOutlines ? trial.byOutlines() : trial);
        return new SheetLayouts(material, thicknessMm, job, trials.stream().map(Trial::webMm).toList(),
                nesting, findings.stream().map(f -> f.within(sheets)).toList());
    }

    /**
     * The least web that no hit beside a part reaches beyond: a narrower one, which neighbours share as a cut, only the proof can
     * allow.
     */
    private static Trial usual(List<PartPlan> parts, List<Trial> trials) {
        double reach = parts.stream().mapToDouble(p -> p.operations().overrunMm()).max().orElse(0);
        return trials.stream().filter(t -> t.webMm() > 0 && t.webMm() >= reach).findFirst().orElse(trials.getLast());
    }

    private List<PartPlan> parts() {
        return new PartPlanner(request).plan(demands, request.readiness().over(input.sheets()));
    }

    private List<Trial> trials(List<PartPlan> parts) {
        return new Trials(parts, thicknessMm, request.rules()).inOrder();
    }

    private KeptNesting kept(List<PartPlan> parts, Trial trial) {
        return new KeptNesting(input.job(parts, trial), input.kept(), new ProgressWatch(progress));
    }

    private List<Finding> outsideMachine() {
        Machine m = request.machine();
        List<Finding> findings = new ArrayList<>();
        if (thicknessMm < m.minThicknessMm() - 1e-9 || thicknessMm > m.maxThicknessMm() + 1e-9) {
            findings.add(Finding.of(PlanningReason.THICKNESS, describe(demands.get(0)), thicknessMm, m.minThicknessMm(),
                    m.maxThicknessMm(), m.name(), material.grade()));
        }
        if (input.offers().isEmpty()) {
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

    /**
     * The first attempt without errors; with none, the one with the fewest. Each web is tried by true outlines first where that
     * costs less than by boxes; such an attempt ends with its first error.
     */
    private SheetJob tryWebs(List<PartPlan> parts, List<Finding> fromParts) {
        Deque<Trial> trials = new ArrayDeque<>(trials(parts));
        SheetJob best = null;
        while (!trials.isEmpty()) {
            progress.check();
            Trial trial = trials.removeFirst();
            List<Finding> notes = best == null ? fromParts : withNote(fromParts, best, trial);
            Nesting boxes = kept(parts, trial).nest();
            Nesting outlines = outlines(parts, trial, boxes);
            if (cheaper(outlines, boxes)) {
                SheetJob job = attempt(parts, notes, trial.byOutlines(), outlines);
                if (job.errors() == 0) {
                    return job;
                }
            }
            SheetJob job = attempt(parts, notes, trial, boxes);
            if (job.errors() == 0) {
                return job;
            }
            if (!trial.oneDirection() && job.loading().findings().stream().anyMatch(Finding::isError)) {
                trials.addFirst(trial.inOneDirection());
            }
            best = best == null || job.errors() < best.errors() ? job : best;
        }
        return input.kept().isEmpty() ? best : withKept(best, trials(parts).getLast().webMm());
    }

    /** Where layouts that a person arranged are among those refused, that is said with the way out. */
    private SheetJob withKept(SheetJob refused, double widestWebMm) {
        List<Finding> all = new ArrayList<>(refused.findings());
        String first = refused.findings().stream().filter(Finding::isError).map(Finding::message).findFirst().orElse("");
        all.add(Finding.of(PlanningReason.KEPT_REFUSED, describe(demands.get(0)), input.kept().size(), widestWebMm, first));
        return new SheetJob(refused.material(), refused.thicknessMm(), refused.parts(), refused.nesting(), refused.loading(),
                refused.runs(), refused.webMm(), refused.sharedCuts(), all);
    }

    /** Layouts by true outlines, or those by boxes where outlines can gain nothing. */
    private Nesting outlines(List<PartPlan> parts, Trial trial, Nesting boxes) {
        boolean alone = trial.oneDirection() || rectangles() || atBound(boxes);
        return alone ? boxes : kept(parts, trial.byOutlines()).nest();
    }

    private boolean rectangles() {
        return demands.stream().allMatch(d -> d.shape().outer().areaMm2()
                > FULL_BOX * d.shape().bounds().width() * d.shape().bounds().height());
    }

    /** Whether the bound on the cost leaves nothing noticeable to gain. */
    private static boolean atBound(Nesting n) {
        return n.boundCost() > 0 && n.costGap() < LEAST_GAIN && n.cost().optional() == 0
                && n.findings().stream().noneMatch(Finding::isError);
    }

    /** More pieces, or as many at noticeably less cost. */
    private static boolean cheaper(Nesting a, Nesting b) {
        int more = pieces(a) - pieces(b);
        return more > 0 || more == 0 && a.cost().net() < b.cost().net() - LEAST_GAIN * Math.abs(b.cost().net()) - 1e-6;
    }

    private static int pieces(Nesting n) {
        return n.layouts().stream().mapToInt(l -> l.runs() * l.placements().size()).sum();
    }

    private List<Finding> withNote(List<Finding> fromParts, SheetJob refused, Trial trial) {
        String first = refused.findings().stream().filter(Finding::isError).map(Finding::message).findFirst().orElse("");
        List<Finding> all = new ArrayList<>(fromParts);
        all.add(Finding.of(trial.oneDirection() ? PlanningReason.ONE_DIRECTION : PlanningReason.CUT_NOT_SHARED,
                describe(demands.get(0)), material.grade(), thicknessMm, trial.webMm(), first));
        return all;
    }

    private SheetJob attempt(List<PartPlan> parts, List<Finding> fromParts, Trial trial, Nesting nesting) {
        progress.check();
        List<Finding> findings = new ArrayList<>(fromParts);
        String sheets = describe(demands.get(0));
        nesting.findings().forEach(f -> findings.add(f.within(sheets)));
        Loading loading = ToolLoading.load(request.machine(), new ToolDemand(parts, nesting).usedTools(), request.holders(),
                request.rules().tooling().forceReserve(), request.readiness().over(runs(nesting)));
        loading.findings().forEach(f -> findings.add(f.within(sheets)));
        List<SheetRun> runs = new ArrayList<>();
        if (findings.stream().noneMatch(Finding::isError)) {
            SheetRunPlanner runPlanner = new SheetRunPlanner(request, material, thicknessMm, parts, loading);
            boolean going = true;
            for (int i = 0; i < nesting.layouts().size() && going; i++) {
                progress.check();
                runs.add(runPlanner.plan(nesting.layouts().get(i)));
                String layout = sheets + ", layout " + (i + 1);
                SheetRunPlanner.findings(runs.get(i)).forEach(f -> findings.add(f.within(layout)));
                going = !trial.outlines() || findings.stream().noneMatch(Finding::isError);
            }
        }
        return new SheetJob(material, thicknessMm, parts, nesting, loading, runs, trial.webMm(), trial.shared(), findings);
    }

    private static double runs(Nesting nesting) {
        return nesting.layouts().stream().mapToDouble(l -> l.runs()).sum();
    }
}
