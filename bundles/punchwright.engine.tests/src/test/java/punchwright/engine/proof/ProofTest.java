// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.holding.ClampArrangement;

/** A good plan is proven; each way of spoiling it is caught and named. */
class ProofTest {

    @Test
    void goodPlanIsProven() {
        ProofResult r = SmallPlan.of(3, 2).prove();
        assertEquals(List.of(), codes(r), () -> messages(r));
        assertTrue(r.proven());
        assertEquals(11, r.checks().size());
    }

    /** Scallop of 8 mm hits on a circle of 40 at 6 degrees: Rc - (r cos(a/2) + sqrt(R^2 - r^2 sin^2(a/2))), by hand 0.110. */
    @Test
    void worstEdgeIsTheScallop() {
        double half = Math.toRadians(3);
        double meet = 16 * Math.cos(half) + Math.sqrt(16 - 256 * Math.sin(half) * Math.sin(half));
        double worst = SmallPlan.of(1, 1).prove().worstEdgeMm();
        assertTrue(worst <= 20 - meet + 1e-3 && worst > 0.8 * (20 - meet), worst + " mm, scallop " + (20 - meet) + " mm");
    }

    @Test
    void movedOpening() {
        SmallPlan p = SmallPlan.of(2, 1);
        caught(p.change(0, h -> new ProofHit(h.id(), h.xMm() + 0.3, h.yMm(), 0, h.tool(), 0)), "PROOF-GOUGE");
    }

    @Test
    void openingMovedIntoThePlate() {
        SmallPlan p = SmallPlan.of(1, 1);
        ProofResult r = caught(p.change(p.first(SmallPlan.Q10), h -> new ProofHit(h.id(), h.xMm() + 16, h.yMm(), 0, h.tool(), 0)),
                "PROOF-GOUGE");
        assertTrue(codes(r).contains("PROOF-UNCUT"));
    }

    @Test
    void droppedOpening() {
        SmallPlan p = SmallPlan.of(2, 1);
        p.hits.remove(0);
        caught(p, "PROOF-UNCUT");
    }

    @Test
    void droppedNibble() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.remove(p.first(SmallPlan.R8) + 7);
        caught(p, "PROOF-UNCUT");
    }

    @Test
    void droppedSlit() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.remove(p.first(SmallPlan.SLIT) + 1);
        caught(p, "PROOF-UNCUT");
    }

    @Test
    void wrongAngle() {
        SmallPlan p = SmallPlan.of(1, 1);
        caught(p.change(p.first(SmallPlan.Q10), h -> new ProofHit(h.id(), h.xMm(), h.yMm(), 45, h.tool(), 0)), "PROOF-GOUGE");
    }

    @Test
    void wrongTool() {
        SmallPlan p = SmallPlan.of(1, 1);
        caught(p.change(0, h -> new ProofHit(h.id(), h.xMm(), h.yMm(), 0, SmallPlan.R8, 0)), "PROOF-UNCUT");
    }

    @Test
    void jointCutAway() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.add(new ProofHit(999, 90, 77.5, 0, SmallPlan.SLIT, 0));
        caught(p, "PROOF-JOINT-MISSING");
    }

    @Test
    void jointsOnTheSkeletonSideCutAway() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.add(new ProofHit(998, 90, 76, 0, SmallPlan.THIN, 0));
        p.hits.add(new ProofHit(999, 90, 144, 0, SmallPlan.THIN, 0));
        caught(p, "PROOF-PART-LOOSE");
    }

    @Test
    void clampMovedUnderAHit() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.add(new ProofHit(999, 300, 40, 0, SmallPlan.Q10, 0));
        assertTrue(p.prove().proven(), () -> messages(p.prove()));
        p.holdings = List.of(new ClampArrangement(List.of(300.0, 700.0), 0, 2000, false));
        caught(p, "PROOF-CLAMP");
    }

    @Test
    void onlyOneClampOnTheSheet() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.holdings = List.of(new ClampArrangement(List.of(300.0, 1990.0), 0, 2000, false));
        caught(p, "PROOF-UNCLAMPED");
    }

    @Test
    void thickerSheet() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.thicknessMm = 10;
        ProofResult r = caught(p, "PROOF-THICKNESS");
        assertTrue(codes(r).containsAll(List.of("PROOF-MASS", "PROOF-PUNCH-SMALL")), () -> messages(r));
        p.thicknessMm = 0.35;
        caught(p, "PROOF-CLEARANCE");
    }

    @Test
    void beyondTravel() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.holdings = List.of(new ClampArrangement(List.of(200.0, 600.0), 60, 2000, false));
        caught(p, "PROOF-TRAVEL-X");
    }

    /** The louvre stands 2 mm from the right slit; 1.5 t = 2.25 mm are needed. */
    @Test
    void cutBesideAStandingForm() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.add(0, p.hits.remove(p.first(SmallPlan.LOUVRE)));
        caught(p, "PROOF-FORM-STRUCK");
        p.thicknessMm = 1.3;
        assertTrue(p.prove().proven(), () -> messages(p.prove()));
    }

    @Test
    void formDroppedMovedOrTurned() {
        SmallPlan p = SmallPlan.of(1, 1);
        int louvre = p.first(SmallPlan.LOUVRE);
        p.change(louvre, h -> new ProofHit(h.id(), h.xMm() - 0.3, h.yMm(), 0, h.tool(), 0));
        assertTrue(codes(caught(p, "PROOF-FORM-UNASKED")).contains("PROOF-FORM-MISSING"));
        p.change(louvre, h -> new ProofHit(h.id(), h.xMm() + 0.3, h.yMm(), 180, h.tool(), 0));
        caught(p, "PROOF-FORM-MISSING");
        p.hits.remove(louvre);
        caught(p, "PROOF-FORM-MISSING");
    }

    @Test
    void doubledHitIsAWarning() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.add(p.hits.getFirst());
        ProofResult r = p.prove();
        assertTrue(r.proven());
        assertEquals(List.of("PROOF-DOUBLE"), codes(r));
    }

    @Test
    void partWithoutJointsFallsAndMustBeFinishedBefore() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.joints.clear();
        p.hits.add(new ProofHit(998, 90, 77.5, 0, SmallPlan.SLIT, 0));
        p.hits.add(new ProofHit(999, 90, 142.5, 0, SmallPlan.SLIT, 0));
        assertEquals(List.of("PROOF-PART-FALLS"), codes(p.prove()));
        p.hits.add(p.hits.remove(0));
        caught(p, "PROOF-LOOSE-EARLY");
    }

    @Test
    void overlappingPartsAndPartsOffTheSheet() {
        SmallPlan p = SmallPlan.of(1, 1);
        p.parts.add(p.parts.getFirst().moved(punchwright.engine.geometry.Pose.at(30, 0, 0)));
        caught(p, "PROOF-PARTS-OVERLAP");
        p.parts.set(1, p.parts.getFirst().moved(punchwright.engine.geometry.Pose.at(-60, 0, 0)));
        caught(p, "PROOF-PART-OFF-SHEET");
    }

    @Test
    void everyReasonHasTextsInBothLanguagesWithTheSamePlaceholders() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            ResourceBundle b = ResourceBundle.getBundle("punchwright.engine.proof.findings", locale,
                    ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
            for (ProofReason reason : ProofReason.values()) {
                String message = b.getString(reason.code() + ".message");
                assertFalse(b.getString(reason.code() + ".remedy").isBlank());
                ResourceBundle english = ResourceBundle.getBundle("punchwright.engine.proof.findings", Locale.ENGLISH);
                assertEquals(placeholders(english.getString(reason.code() + ".message")), placeholders(message), reason.code());
            }
        }
    }

    private static List<String> placeholders(String text) {
        List<String> found = new ArrayList<>();
        java.util.regex.Matcher m = java.util.regex.Pattern.compile("\\{(\\d)").matcher(text);
        while (m.find()) {
            found.add(m.group(1));
        }
        return found.stream().distinct().sorted().toList();
    }

    private static ProofResult caught(SmallPlan p, String code) {
        ProofResult r = p.prove();
        assertFalse(r.proven());
        assertTrue(codes(r).contains(code), () -> "expected " + code + ", found " + messages(r));
        return r;
    }

    private static List<String> codes(ProofResult r) {
        return r.findings().stream().map(Finding::code).distinct().toList();
    }

    private static String messages(ProofResult r) {
        return r.findings().stream().map(f -> f.code() + " " + f.placeIfAny().map(Object::toString).orElse("") + " "
                + f.message())
                .collect(Collectors.joining("\n"));
    }
}
