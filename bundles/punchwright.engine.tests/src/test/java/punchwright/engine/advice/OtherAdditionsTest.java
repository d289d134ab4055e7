// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.Progress;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolLoading;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolWishes;
import punchwright.engine.tooling.ToolingJob;
import punchwright.engine.tooling.ToolingRules;
import punchwright.engine.tooling.UsedTool;

/** Dies, one more of a tool, turning places and holders: what the advice says against every part chosen anew without memory. */
class OtherAdditionsTest {

    private static final double RATE = 90;
    private static final double TIMES = 20;
    private static final int PIECES = 80;

    private static final Tool OBROUND = SmallShop.tool(ToolShape.OBROUND, 16, 6, 140);

    private static ToolWeighing choice(PartDemand d, List<Tool> tools, Machine machine) {
        BookPart part = BookPart.of(0, d);
        return ToolChoice.price(new ToolingJob(part.features(), d.material(), d.thicknessMm(), machine, tools, List.of(),
                ToolingRules.USUAL), part.weights(RATE), ToolWishes.NONE);
    }

    private static double perYear(ToolWeighing w) {
        assertTrue(w.operations().complete());
        long tools = w.operations().operations().stream().map(o -> o.tool().id()).distinct().count();
        return TIMES * (PIECES * w.costSeconds() * RATE / 3600 + tools * 2.5 / 60 * (42 + RATE));
    }

    private static AdviceJob job(PartDemand d, List<Tool> tools, Machine machine, boolean saveWork) {
        return new AdviceJob(List.of(new BookOrder("X", TIMES, List.of(d))), List.of(new BookMachine(machine, RATE)), tools,
                List.of(), List.of(), 42, 2.5, ToolingRules.USUAL, new AdviceOptions(60, 100_000, Map.of(), saveWork, saveWork));
    }

    private static Recommendation row(List<Recommendation> rows, String id) {
        return rows.stream().filter(r -> r.addition().id().equals(id)).findFirst().orElseThrow(() -> new AssertionError(id
                + " is not among " + rows.stream().map(r -> r.addition().id()).toList()));
    }

    /** A plate with an obround lying and one standing. */
    private static PartDemand twoAngles() {
        List<Contour> holes = new ArrayList<>();
        holes.add(ToolFootprint.of(OBROUND).getFirst().moved(Pose.at(40, 30, 0)));
        holes.add(ToolFootprint.of(OBROUND).getFirst().moved(Pose.at(80, 30, 90)));
        return SmallShop.plate("o", 120, 60, PIECES, holes);
    }

    private static Tool onHand(Tool t, int n) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(),
                t.fixedAngleDeg(), t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(),
                t.grindCost(), t.hitsPerGrind(), t.hitsSinceGrind(), n, t.formHeightMm(), t.cluster(), t.freeContour());
    }

    /** A round tool whose die is far too wide for 2 mm: with the right die one hit does what many do today. */
    @Test
    void aDieSavesWhatTheToolSavesWithIt() {
        Tool wide = Tools.withClearances(SmallShop.tool(ToolShape.ROUND, 27, 27, 120), List.of(1.5));
        List<Tool> tools = new ArrayList<>(SmallShop.tools());
        tools.add(wide);
        PartDemand plate = SmallShop.plate("d", 100, 60, PIECES, List.of(Contour.circle(new Point(50, 30), 27)));
        Machine press = SmallShop.press(14);
        for (boolean saveWork : new boolean[] { true, false }) {
            Advice advice = Advisor.advise(job(plate, tools, press, saveWork), Progress.SILENT);
            Recommendation die = row(advice.ranking(), "die-" + wide.id() + "-0.4");
            List<Tool> with = new ArrayList<>(SmallShop.tools());
            with.add(Tools.withClearances(wide, List.of(0.4, 1.5)));
            double saving = perYear(choice(plate, tools, press)) - perYear(choice(plate, with, press));
            assertTrue(saving > 1, "the case tests nothing: " + saving);
            assertEquals(saving, die.saving().perYear(), 1e-6);
            assertTrue(die.mostPerYear() >= saving - 1e-6);
        }
    }

    /** No place turns and one obround tool is owned: a second one, or a place that turns, makes the plate possible. */
    @Test
    void oneMoreOfAToolAndATurningPlaceMakeWhatNeedsTwoAnglesPossible() {
        Machine still = SmallShop.pressThatDoesNotTurn(14);
        List<Tool> one = List.of(onHand(OBROUND, 1), SmallShop.tool(ToolShape.SQUARE, 10, 10, 110));
        PartDemand plate = twoAngles();
        assertFalse(choice(plate, one, still).operations().complete());
        assertTrue(choice(plate, List.of(onHand(OBROUND, 2), one.get(1)), still).operations().complete());
        assertTrue(choice(plate, one, SmallShop.press(14)).operations().complete());
        for (boolean saveWork : new boolean[] { true, false }) {
            Advice advice = Advisor.advise(job(plate, one, still, saveWork), Progress.SILENT);
            for (String id : List.of("second-" + OBROUND.id(), "turning-P1-1")) {
                MadePossible possible = row(advice.enabling(), id).makesPossible().getFirst();
                assertTrue(possible.whole() && possible.nowhere(), id);
            }
        }
    }

    /** With two obround tools the plate is made at two set-ups; a turning place saves one of them. */
    @Test
    void aTurningPlaceSavesTheSetUpOfTheSecondAngle() {
        Machine still = SmallShop.pressThatDoesNotTurn(14);
        Machine turning = SmallShop.withFirstPlaceTurning(still);
        List<Tool> two = List.of(onHand(OBROUND, 2), SmallShop.tool(ToolShape.SQUARE, 10, 10, 110));
        PartDemand plate = twoAngles();
        double saving = perYear(choice(plate, two, still)) - perYear(choice(plate, two, turning));
        assertTrue(saving > 1, "the case tests nothing: " + saving);
        for (boolean saveWork : new boolean[] { true, false }) {
            Recommendation option = row(Advisor.advise(job(plate, two, still, saveWork), Progress.SILENT).ranking(),
                    "turning-P1-1");
            assertEquals(saving, option.saving().perYear(), 1e-6);
            assertTrue(option.mostPerYear() >= saving - 1e-6);
        }
    }

    /** One place: all tools but one are set by hand; with a holder as many fewer as the loading says. */
    @Test
    void aHolderSavesTheChangesByHandThatItsInsertsSpare() {
        Machine press = SmallShop.press(1);
        PartDemand plate = SmallShop.plate("h", 140, 70, PIECES,
                List.of(Contour.circle(new Point(30, 35), 6), Contour.circle(new Point(75, 35), 14)));
        List<Tool> tools = SmallShop.tools();
        ToolWeighing chosen = choice(plate, tools, press);
        for (boolean saveWork : new boolean[] { true, false }) {
            Advice advice = Advisor.advise(job(plate, tools, press, saveWork), Progress.SILENT);
            List<Recommendation> holders = advice.ranking().stream().filter(r -> r.addition().kind() == AdditionKind.HOLDER)
                    .toList();
            assertFalse(holders.isEmpty());
            for (Recommendation r : holders) {
                long spared = byHand(chosen, press, List.of()) - byHand(chosen, press, List.of(r.addition().holder()));
                assertTrue(spared > 0, "the case tests nothing");
                double perChange = (press.times().handChangeS() - press.times().toolChangeS()) / 10;
                assertEquals(TIMES * PIECES * spared * perChange * RATE / 3600, r.saving().perYear(), 1e-6);
            }
        }
    }

    private static long byHand(ToolWeighing w, Machine machine, List<Holder> holders) {
        List<UsedTool> used = List.copyOf(PartChoice.of(new ToolingJob(BookPart.of(0, SmallShop.plate("h", 1, 1, 1, List.of()))
                .features(), SmallShop.STEEL, 2, machine, List.of(), List.of(), ToolingRules.USUAL), BookPart.of(0,
                        SmallShop.plate("h", 1, 1, 1, List.of())).weights(RATE), w).used().values());
        Loading loading = ToolLoading.load(machine, used, holders, ToolingRules.USUAL.forceReserve());
        assertTrue(loading.findings().stream().noneMatch(f -> f.isError()));
        return loading.uses().stream().filter(u -> u.place() == null).count();
    }
}
