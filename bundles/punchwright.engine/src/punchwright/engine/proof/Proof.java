// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Decides from hits, tool shapes, clamps, machine and drawing alone whether the plan of one sheet works. It shares no code
 * with the stages that made the plan.
 */
public final class Proof {

    /** Names of the checks in the order they are made. */
    private static final List<String> CHECKS = List.of("sheet limits", "tools and forces", "holdings", "hits on sheet and reach",
            "clamps", "parts on sheet", "edges cut and not entered", "micro-joints", "forms made and untouched",
            "skeleton and loose parts", "double hits");

    private record PunchKey(String tool, double angleDeg) {
    }

    private final ProofJob job;
    private final Report report = new Report();
    private final Map<PunchKey, Integer> keys = new HashMap<>();
    private final List<Punch> punches = new ArrayList<>();

    private Proof(ProofJob job) {
        this.job = job;
    }

    /**
     * Proves a plan or says what is wrong with it.
     *
     * @return proven when no check found an error; warnings may remain
     */
    public static ProofResult prove(ProofJob job) {
        return new Proof(job).run();
    }

    private ProofResult run() {
        List<Stroke> strokes = strokes();
        StrokeGrid grid = new StrokeGrid(strokes);
        Rings rings = new Rings(job.parts(), job.toleranceMm());
        Joints joints = new Joints(job.joints(), job.jointMm(), job.toleranceMm());
        SheetCheck sheet = new SheetCheck(job, report);
        HoldingCheck holding = new HoldingCheck(job, report);
        sheet.limits();
        new ToolCheck(job, report).run(strokes);
        holding.holdings();
        strokes.forEach(sheet::hit);
        strokes.stream().filter(holding::hasHolding).forEach(holding::hit);
        holding.order(strokes);
        holding.heldMetal(grid);
        sheet.parts(rings);
        new OverlapCheck(rings, report).run();
        EdgeCheck edges = new EdgeCheck(job, rings, grid, joints, report);
        List<EdgeCheck.RingState> states = edges.run();
        new InsideCheck(job, rings, report).run(strokes, edges.gouging());
        joints.missing().forEach(p -> report.add(ProofReason.JOINT_MISSING, p, "micro-joint", job.jointMm()));
        FormCheck forms = new FormCheck(job, grid, report);
        forms.demanded(strokes, rings);
        forms.run(strokes);
        new StandingForms(job, holding, report).run(strokes);
        new SkeletonCheck(job, holding, joints, states, report).run(strokes, rings);
        doubles(strokes);
        return new ProofResult(!report.failed(), CHECKS, edges.worstMm(), report.findings());
    }

    private List<Stroke> strokes() {
        List<Stroke> strokes = new ArrayList<>();
        for (ProofHit hit : job.hits()) {
            int key = keys.computeIfAbsent(new PunchKey(hit.tool().id(), hit.angleDeg()), k -> {
                punches.add(Punch.of(hit.tool(), hit.angleDeg()));
                return punches.size() - 1;
            });
            strokes.add(Stroke.of(strokes.size(), hit, punches.get(key), key));
        }
        return strokes;
    }

    private record Spot(int punch, long x, long y) {
    }

    private void doubles(List<Stroke> strokes) {
        Map<Spot, Stroke> first = new HashMap<>();
        Map<Spot, Integer> times = new HashMap<>();
        for (Stroke s : strokes) {
            Spot spot = new Spot(s.punchKey(), Math.round(s.x() * 1e3), Math.round(s.y() * 1e3));
            Stroke before = first.putIfAbsent(spot, s);
            if (times.merge(spot, 1, Integer::sum) > FormCheck.hitsInOnePlace(s.punch().tool(), job.thicknessMm())) {
                report.add(ProofReason.DOUBLE, s.at(), s.name(), s.hit().id(), before.hit().id(), s.punch().tool().name());
            }
        }
    }
}
