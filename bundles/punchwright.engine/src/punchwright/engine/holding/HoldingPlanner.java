// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Clamps;

/** Entry point of the holding stage: clamp setting, repositions and turn for the hits of one sheet. */
public final class HoldingPlanner {

    private static final int MORE_THAN_BOUND = 6;
    private static final long SETTING_NEEDS = 500_000;
    private static final long ALL_VISITS = 40_000_000;

    private static final long JOINT_WORK = 100_000;
    private static final int JOINT_NEEDS = 100;

    private record Found(double[] clamps, List<Stand> stands, int bound, int hopeless, boolean exact) {
    }

    private final HoldingJob job;
    private final Rig rig;
    private final List<Finding> findings = new ArrayList<>();

    private HoldingPlanner(HoldingJob job) {
        this.job = job;
        this.rig = new Rig(job);
    }

    /**
     * The fewest holdings found that make every hit that can be made; each hit is in exactly one holding or in a finding,
     * and no holding is empty. Hits keep their ids and their coordinates on the sheet as it was loaded.
     */
    public static HoldingPlan plan(HoldingJob job) {
        return new HoldingPlanner(Objects.requireNonNull(job, "job")).run();
    }

    private HoldingPlan run() {
        if (refused() || job.hits().isEmpty()) {
            return new HoldingPlan(List.of(), findings);
        }
        Found found = choose();
        List<Stand> stands = new ArrayList<>(found.stands);
        stands.sort(Comparator.comparingInt(Stand::side).thenComparingDouble(Stand::zero));
        Assignment assignment = new Assignment(rig, found.clamps, stands,
                new FormSpace(job.hits(), job.thicknessMm()));
        List<Holding> holdings = holdings(found.clamps, stands, assignment);
        report(found, holdings, assignment);
        return new HoldingPlan(holdings, findings);
    }

    private boolean refused() {
        Clamps c = job.machine().clamps();
        if (job.sheetLengthMm() > job.machine().longestSheetMm()) {
            findings.add(Finding.of(HoldingReason.SHEET_LONG, "sheet", job.sheetLengthMm(), job.machine().longestSheetMm()));
        } else if (job.sheetWidthMm() > 2 * rig.reachYMm) {
            findings.add(Finding.of(HoldingReason.SHEET_WIDE, "sheet", job.sheetWidthMm(), rig.reachYMm, 2 * rig.reachYMm));
        } else if (rig.clampCount < 1) {
            findings.add(Finding.of(HoldingReason.NO_CLAMP_FITS, "sheet", job.sheetLengthMm(), c.widthMm(), c.minCenterMm()));
        }
        return !findings.isEmpty();
    }

    /** As loaded where that makes every hit; else with the turn where it makes more of them. */
    private Found choose() {
        ClampSettings choices = new ClampSettings(rig);
        Found even = fewest(List.of(choices.even()), 1);
        if (even.hopeless == 0 && even.stands.size() <= even.bound) {
            return even;
        }
        List<double[]> settings = choices.all();
        Found asLoaded = improved(fewest(settings, 1), choices, 1);
        if (asLoaded.hopeless == 0) {
            return asLoaded;
        }
        Found turned = improved(fewest(settings, 2), choices, 2);
        return turned.hopeless < asLoaded.hopeless ? turned : asLoaded;
    }

    /** Of the settings that leave the fewest needs unserved, the first that needs the fewest positions. */
    private Found fewest(List<double[]> settings, int sides) {
        int least = Integer.MAX_VALUE;
        List<StandSearch> searches = new ArrayList<>();
        List<double[]> kept = new ArrayList<>();
        int step = 1 + (int) ((long) settings.size() * rig.needs.size() / SETTING_NEEDS);
        for (int i = 0; i < settings.size(); i += step) {
            double[] clamps = settings.get(i);
            StandSearch search = new StandSearch(rig, clamps, sides);
            if (search.hopeless() < least) {
                least = search.hopeless();
                searches.clear();
                kept.clear();
            }
            if (search.hopeless() == least) {
                searches.add(search);
                kept.add(clamps);
            }
        }
        return fewest(searches, kept, least);
    }

    private static Found fewest(List<StandSearch> searches, List<double[]> settings, int hopeless) {
        int bound = searches.get(0).bound();
        long each = ALL_VISITS / searches.size();
        double[] clamps = settings.get(0);
        List<Stand> best = searches.get(0).find(Integer.MAX_VALUE, Long.MAX_VALUE);
        for (int i = 0; i < searches.size() && best.size() > bound; i++) {
            List<Stand> fewer = searches.get(i).find(best.size() - 1, each);
            while (fewer != null) {
                best = fewer;
                clamps = settings.get(i);
                fewer = best.size() > bound ? searches.get(i).find(best.size() - 1, each) : null;
            }
        }
        return new Found(clamps, best, bound, hopeless, best.size() == bound);
    }

    /** Fewer positions, or fewer needs unserved, by the joint search where the sampled settings left room. */
    private Found improved(Found found, ClampSettings choices, int sides) {
        if (rig.needs.size() > JOINT_NEEDS) {
            return found;
        }
        List<Need> needs = found.hopeless == 0 ? rig.needs : rig.needs.stream()
                .filter(n -> new JointSearch(rig, List.of(n), choices.even(), sides).find(1, JOINT_WORK) != null).toList();
        int lost = rig.needs.size() - needs.size();
        int most = found.hopeless > lost ? found.stands.size() + MORE_THAN_BOUND : found.stands.size() - 1;
        JointSearch joint = new JointSearch(rig, needs, choices.even(), sides);
        boolean exact = found.hopeless == lost;
        for (int count = Math.max(1, found.bound); count <= most; count++) {
            JointSearch.Answer answer = joint.find(count, JOINT_WORK);
            if (answer != null) {
                return new Found(answer.clamps(), answer.stands(), found.bound, lost, exact);
            }
            exact &= !joint.gaveUp();
        }
        return new Found(found.clamps, found.stands, found.bound, found.hopeless, exact);
    }

    private List<Holding> holdings(double[] clamps, List<Stand> stands, Assignment assignment) {
        List<Holding> holdings = new ArrayList<>();
        ClampedForms forms = new ClampedForms(rig, clamps);
        for (int s = 0; s < stands.size(); s++) {
            List<SheetHit> hits = assignment.hits(s);
            if (!hits.isEmpty()) {
                List<Need> needs = hits.stream().map(rig.needOf::get).distinct().toList();
                Slack slack = Slack.of(rig, clamps, stands.get(s), needs);
                double wish = slack.nearest(holdings.isEmpty() ? 0 : (slack.low() + slack.high()) / 2);
                int side = stands.get(s).side();
                double zero = forms.clear(slack, side, wish);
                findings.addAll(forms.findings(holdings.size(), side, zero));
                holdings.add(holding(holdings.size(), clamps, zero, side == 1, hits));
                forms.stand(hits, holdings.size() - 1);
            }
        }
        return holdings;
    }

    private Holding holding(int index, double[] clamps, double zero, boolean turned, List<SheetHit> hits) {
        List<Double> centers = new ArrayList<>();
        for (double u : clamps) {
            centers.add(zero + u);
        }
        return new Holding(index, new ClampArrangement(centers, zero, zero + rig.travelMm, turned),
                hits.stream().map(SheetHit::id).toList());
    }

    private void report(Found found, List<Holding> holdings, Assignment assignment) {
        for (SheetHit hit : assignment.unreached()) {
            Need need = rig.needOf.get(hit);
            boolean clamp = need.reachedY()[0] && need.nearEdge()[0] || need.reachedY()[1] && need.nearEdge()[1];
            findings.add(Finding.at(hit.at(), HoldingReason.HIT_UNREACHABLE, "hit " + hit.id(), hit.id(),
                    hit.use().tool().name(), hit.at().x(), hit.at().y(), clamp ? 1 : 0));
        }
        long before = holdings.stream().filter(h -> !h.clamps().turned()).count();
        if (before > 0 && before < holdings.size()) {
            findings.add(Finding.of(HoldingReason.TURNED, "sheet", before, job.sheetWidthMm()));
        }
        if (before == 0 && !holdings.isEmpty()) {
            findings.add(Finding.of(HoldingReason.OTHER_EDGE, "sheet"));
        }
        if (rig.clampCount < job.machine().clamps().count()) {
            findings.add(Finding.of(HoldingReason.FEWER_CLAMPS, "sheet", rig.clampCount, job.machine().clamps().count(),
                    job.sheetLengthMm()));
        }
        List<Integer> split = assignment.splitParts();
        if (!split.isEmpty()) {
            findings.add(Finding.of(HoldingReason.PARTS_SPLIT, "sheet", split.size(),
                    String.join(", ", split.stream().map(p -> String.valueOf(p + 1)).toList())));
        }
        if (!found.exact && holdings.size() > found.bound) {
            findings.add(Finding.of(HoldingReason.SEARCH_LIMIT, "sheet", holdings.size(), found.bound));
        }
    }
}
