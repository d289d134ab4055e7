// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.junit.jupiter.api.Test;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.press.Place;

/**
 * Every feature that is not made and every tool that is passed over has a typed reason with values and a way out, whatever is
 * wrong with part, library and machine; and the ways out with values work when they are taken.
 */
class TypedReasonTest {

    private static final int CASES = 60;

    /** A strong press, a weak one, a soft material and a hard one. */
    private static final Elsewhere ELSEWHERE = new Elsewhere(
            List.of(named("E1", 400_000, 350_000, 120), named("E2", 60_000, 40_000, 60)),
            List.of(new Material("M2", "EN AW-1050", MaterialGroup.ALUMINIUM, 2.7, 70, 110, 80, ClearanceRule.PERCENT, 15, 2,
                            0.8),
                    new Material("M3", "1.4301", MaterialGroup.STAINLESS_STEEL, 7.9, 520, 720, 560, ClearanceRule.PERCENT, 25,
                            0.5, 1.5)));

    private final Set<ToolingReason> seen = EnumSet.noneOf(ToolingReason.class);
    private final Map<WayOut.Kind, Integer> tried = new EnumMap<>(WayOut.Kind.class);
    private final Set<Finding> read = Collections.newSetFromMap(new IdentityHashMap<>());
    private int refusedFeatures;
    private int featuresOut;
    private int toolsOut;
    private int toolsRefused;
    private int passedOver;
    private int pairs;
    private int none;

    private static FeatureSet part(Random random) {
        Parts p = Parts.plate(240, 180);
        for (int i = 0; i < 6; i++) {
            double x = 40 + 70 * (i % 3);
            double y = 45 + 80 * (i / 3);
            double l = 2 + random.nextInt(40);
            switch (random.nextInt(6)) {
                case 0 -> p.round(x, y, 1 + random.nextInt(45));
                case 1 -> p.rectangle(x, y, 15 * random.nextInt(6), l + 3, 2 + random.nextInt(8));
                case 2 -> p.roundedRectangle(x, y, 0, l + 12, 10, 1 + random.nextInt(4));
                case 3 -> p.free(Contour.polygon(List.of(new Point(x, y), new Point(x + 30, y),
                        new Point(x + 30, y + 4 + l / 3))));
                case 4 -> p.form("COLLAR", x, y, 4 + random.nextInt(6));
                default -> p.rectangle(x, y, 0, 10, 10);
            }
        }
        return p.build("T");
    }

    /** A library with defects: worn, not owned, wrong clearance, fixed angle, too small, too large. */
    private static List<Tool> tools(Random random) {
        List<Tool> tools = new ArrayList<>();
        for (Tool t : Shop.tools()) {
            if (random.nextInt(3) > 0) {
                int fault = random.nextInt(8);
                tools.add(new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(),
                        fault == 0 ? AngleFreedom.FIXED : t.freedom(), fault == 0 ? 30 : 0,
                        fault == 1 ? List.of(2.5) : fault == 2 ? List.of() : t.clearancesTotalMm(), t.shear(), t.shearHeightMm(),
                        t.price(), fault == 3 ? 0 : 10, t.grindCost(), Map.of(MaterialGroup.MILD_STEEL, 60_000),
                        fault == 3 ? 70_000 : 0, fault == 4 ? 0 : 1, 0, List.of(), null));
            }
        }
        tools.add(Shop.tool("F" + random.nextInt(3), ToolShape.COLLAR, 4 + random.nextInt(6), 6, 0));
        return tools;
    }

    private static ToolingJob job(Random random) {
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(6); i++) {
            places.add(new Place("" + i, 20 + random.nextInt(80), 5_000 + random.nextInt(150_000), random.nextBoolean(), 0.02,
                    random.nextBoolean()));
        }
        List<Tool> tools = tools(random);
        FeatureSet features = part(random);
        double thickness = new double[] { 0.3, 1, 2, 3, 6, 9 }[random.nextInt(6)];
        return new ToolingJob(features, Shop.STEEL, thickness, Shop.machine(20_000 + random.nextInt(200_000),
                random.nextBoolean() ? HeadKind.TURRET : HeadKind.SINGLE_HEAD, places), tools, List.of(), ToolingRules.USUAL,
                ELSEWHERE);
    }

    private static Machine named(String id, double pressN, double placeN, double diameterMm) {
        Machine m = Shop.machine(pressN, HeadKind.TURRET, List.of(new Place("1", diameterMm, placeN, true, 0.02, false)));
        return new Machine(id, "press " + id, m.throatDepthMm(), m.travelXMm(), m.travelYMm(), m.xAxis(), m.yAxis(),
                m.longestSheetMm(), m.minThicknessMm(), m.maxThicknessMm(), m.maxSheetMassKg(), m.pressForceN(), m.headKind(),
                m.places(), m.clamps(), m.times(), m.dropOpeningMm(), m.accuracyMm(), m.options());
    }

    /** Reads a finding; one that many features share is read once. */
    private void check(Finding f, String what) {
        if (!read.add(f)) {
            return;
        }
        if (f.reason() instanceof ToolingReason reason) {
            seen.add(reason);
        }
        assertTrue(!f.isError() || f.reason() instanceof ToolingReason, what + " " + f.code());
        assertFalse(f.subject().isBlank(), what);
        assertFalse(f.arguments().isEmpty(), what + " has no values: " + f.code());
        f.arguments().forEach(a -> assertFalse(a.toString().isBlank() || a.toString().equals("NaN"), what + " " + f.code()));
        assertFalse(f.message().isBlank() || f.message().contains("{"), what + " " + f.message());
        assertFalse(f.remedy().isBlank(), what + " has no way out: " + f.code());
    }

    @Test
    void everyRefusalIsTypedWithValuesAndItsNearestWayOut() {
        for (int seed = 1; seed <= CASES; seed++) {
            Random random = new Random(seed);
            ToolingJob job = job(random);
            Tool banned = job.tools().get(random.nextInt(job.tools().size()));
            Set<String> forbidden = random.nextBoolean() ? Set.of(banned.id()) : Set.of();
            ToolWishes wishes = new ToolWishes(forbidden, Map.of());
            check(job, wishes, ToolChoice.weigh(job, ChoiceWeights.USUAL, wishes), "seed " + seed);
        }
        System.out.printf(Locale.ROOT, "ways out: %d of %d refused features, %d of %d refused tools; %d take two changes, "
                + "%d told that nothing was found; by kind %s%n", featuresOut, refusedFeatures, toolsOut, toolsRefused, pairs,
                none, tried);
        assertTrue(featuresOut >= 0.95 * refusedFeatures, featuresOut + " of " + refusedFeatures + " refused features");
        assertTrue(toolsOut >= 0.95 * toolsRefused, toolsOut + " of " + toolsRefused + " refused tools");
        assertTrue(refusedFeatures > 200, refusedFeatures + " features refused");
        assertTrue(toolsRefused > 250, toolsRefused + " tools refused");
        assertTrue(passedOver > 1000, passedOver + " tools passed over");
        assertTrue(pairs > 50, pairs + " ways out of two changes");
        assertTrue(seen.size() >= 15, "only these reasons were seen: " + seen);
        Set<WayOut.Kind> all = EnumSet.range(WayOut.Kind.THINNER, WayOut.Kind.LARGER);
        assertTrue(tried.keySet().containsAll(all), "kinds of ways out that were tried: " + tried);
    }

    private void check(ToolingJob job, ToolWishes wishes, ToolWeighing w, String seed) {
        List<Finding> findings = w.operations().findings();
        findings.forEach(f -> check(f, seed + " finding"));
        if (w.ways().isEmpty()) {
            assertEquals(ToolingReason.THICKNESS, findings.getFirst().reason(), seed);
            sheet(job, findings.getFirst(), seed);
            return;
        }
        for (FeatureWays ways : w.ways()) {
            if (ways.alternatives().stream().noneMatch(Alternative::chosen)) {
                String subject = FeatureNames.subject(job.features().part(), ways.features().getFirst());
                Finding why = findings.stream().filter(f -> f.isError() && (f.subject().equals(subject) || f.subject().startsWith(
                        subject + ","))).findFirst().orElseThrow(() -> new AssertionError(seed + ": no reason for " + subject));
                feature(job, wishes, ways.features().getFirst().number(), why, seed);
            }
            long used = ways.alternatives().stream().filter(Alternative::chosen)
                    .flatMap(a -> a.tools().stream().map(Tool::id)).distinct().count();
            assertEquals(job.tools().size(), ways.passedOver().size() + used, seed);
            passedOver += ways.passedOver().size();
            ways.passedOver().forEach(f -> check(f, seed + " passed over"));
            if (ways == w.ways().getFirst()) {
                ways.passedOver().stream().filter(f -> f.isError() && f.reason() != ToolingReason.ANGLE)
                        .forEach(f -> tool(job, f, seed));
            }
            ways.passedOver().stream().filter(f -> f.reason() == ToolingReason.ANGLE).forEach(f -> angle(job, f, seed));
        }
    }

    private void sheet(ToolingJob job, Finding f, String seed) {
        for (WayOut way : f.waysOut()) {
            if (count(f, way)) {
                assertTrue(WayTaken.start(job, null, 0, ToolWishes.NONE).with(way, ELSEWHERE).job().thicknessFits(), seed + way);
            }
        }
        assertTrue(f.waysOut().stream().anyMatch(WayOut::found), seed);
    }

    /** Counts the way and holds its texts against the remedy; false where it only says that nothing was found. */
    private boolean count(Finding f, WayOut way) {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String text = way.text(locale);
            assertTrue(f.remedy(locale).contains(text) && !text.contains("{") && text.length() < 260, f.remedy(locale));
        }
        boolean same = way.text(Locale.ENGLISH).equals(way.text(Locale.GERMAN));
        assertTrue(!same || way.kind() == WayOut.Kind.MATERIAL, way.toString());
        pairs += way.and().isEmpty() ? 0 : 1;
        none += way.found() ? 0 : 1;
        tried.merge(way.kind(), 1, Integer::sum);
        way.and().forEach(w -> tried.merge(w.kind(), 1, Integer::sum));
        return way.found();
    }

    /** With the way out taken the tool is refused no longer; a hundredth nearer to the job's thickness it still is. */
    private void tool(ToolingJob job, Finding f, String seed) {
        Tool tool = job.tools().stream().filter(t -> t.name().equals(f.subject())).findFirst().orElseThrow();
        WayTaken start = WayTaken.start(job, tool, 0, ToolWishes.NONE);
        assertFalse(start.usable(), seed + f);
        assertFalse(f.waysOut().isEmpty(), seed + f);
        toolsRefused++;
        toolsOut += f.waysOut().stream().anyMatch(WayOut::found) ? 1 : 0;
        for (WayOut way : f.waysOut()) {
            String what = seed + " " + f.subject() + " " + f.code() + " " + way;
            if (count(f, way)) {
                assertTrue(start.with(way, ELSEWHERE).usable(), what);
                halves(way).forEach(h -> assertFalse(start.with(h, ELSEWHERE).usable(), what + " needs no two changes"));
                nearer(job, way).ifPresent(w -> assertFalse(start.with(w, ELSEWHERE).usable(), what + " is not the nearest"));
            }
        }
    }

    /** Each of several changes alone; none for a single change. */
    private static List<WayOut> halves(WayOut way) {
        List<WayOut> halves = new ArrayList<>(way.and());
        if (!halves.isEmpty()) {
            halves.add(new WayOut(way.kind(), way.value(), way.id(), way.name(), way.values(), List.of()));
        }
        return halves;
    }

    /** The same, a hundredth of a millimetre nearer to the job's thickness. */
    private static Optional<WayOut> nearer(ToolingJob job, WayOut way) {
        double by = way.kind() == WayOut.Kind.THINNER ? 0.01 : way.kind() == WayOut.Kind.THICKER ? -0.01 : 0;
        boolean room = by != 0 && Math.abs(job.thicknessMm() - way.value()) > 0.011;
        return room ? Optional.of(new WayOut(way.kind(), way.value() + by, "", "", List.of(), way.and())) : Optional.empty();
    }

    private void angle(ToolingJob job, Finding f, String seed) {
        Tool tool = job.tools().stream().filter(t -> t.name().equals(f.subject())).findFirst().orElseThrow();
        toolsRefused++;
        toolsOut += f.waysOut().stream().anyMatch(WayOut::found) ? 1 : 0;
        for (WayOut way : f.waysOut()) {
            if (count(f, way)) {
                double turned = (Double) f.arguments().getFirst() + way.value();
                assertTrue(AngleFit.angleDeg(tool, false, turned).isPresent(), seed + way);
            }
        }
    }

    /** With the way out taken, choosing tools anew makes the feature; without it, or a hundredth nearer, it does not. */
    private void feature(ToolingJob job, ToolWishes wishes, int number, Finding f, String seed) {
        refusedFeatures++;
        featuresOut += f.waysOut().stream().anyMatch(WayOut::found) ? 1 : 0;
        assertFalse(f.waysOut().isEmpty(), seed + f);
        Tool tool = job.tools().stream().filter(t -> f.subject().endsWith(", tool " + t.name())).findFirst().orElse(null);
        WayTaken start = WayTaken.start(job, tool, number, wishes);
        boolean onHand = f.reason() == ToolingReason.ON_HAND;
        assertTrue(onHand || !start.made(), seed + f);
        for (WayOut way : f.waysOut()) {
            String what = seed + " " + f.subject() + " " + f.code() + " " + way;
            if (!count(f, way)) {
                elsewhereNeither(start, what);
            } else if (onHand) {
                WayTaken then = start.with(way, ELSEWHERE);
                assertTrue(ToolChoice.choose(then.job(), ChoiceWeights.USUAL, wishes).findings().stream()
                        .noneMatch(n -> n.reason() == ToolingReason.ON_HAND), what);
            } else {
                assertTrue(start.with(way, ELSEWHERE).made(), what);
                halves(way).forEach(h -> assertFalse(start.with(h, ELSEWHERE).made(), what + " needs no two changes"));
                nearer(job, way).ifPresent(w -> assertFalse(start.with(w, ELSEWHERE).made(), what + " is not the nearest"));
            }
        }
    }

    /** Where it is said that the shop cannot make it as drawn, no other machine makes it. */
    private static void elsewhereNeither(WayTaken start, String what) {
        for (Machine m : ELSEWHERE.machines()) {
            assertFalse(new WayTaken(start.job().on(m), start.tool(), start.number(), start.wishes()).made(), what + m.id());
        }
    }
}
