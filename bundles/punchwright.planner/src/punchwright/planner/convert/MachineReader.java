// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.List;

import punchwright.engine.press.Axis;
import punchwright.engine.press.Clamps;
import punchwright.engine.press.FormClearance;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.MachineOptions;
import punchwright.engine.press.Place;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.Readiness;
import punchwright.model.shop.ChangeKind;
import punchwright.model.shop.ChangeTime;
import punchwright.model.shop.Rates;
import punchwright.model.shop.ToolFamily;

/** Machine records for the engine: kN become N, "0: not given" becomes the value that stands for it. */
public final class MachineReader {

    private static final double N_PER_KN = 1000;

    private MachineReader() {
    }

    public static Machine read(punchwright.model.shop.Machine m) {
        double widest = m.getWidestSheetMm() > 0 ? m.getWidestSheetMm() : m.getThroatDepthMm();
        return new Machine(m.getId(), m.getName(), widest, m.getTravelXMm(), m.getTravelYMm(),
                new Axis(m.getMaxSpeedXMmPerS(), m.getAccelerationXMmPerS2()),
                new Axis(m.getMaxSpeedYMmPerS(), m.getAccelerationYMmPerS2()), m.getLongestSheetMm(), m.getMinThicknessMm(),
                m.getMaxThicknessMm(), m.getMaxSheetMassKg(), m.getPressForceKn() * N_PER_KN,
                HeadKind.valueOf(m.getHeadKind().getName()), places(m), clamps(m.getClamps()), times(m),
                m.getSlugOpeningMm(), m.getPositioningAccuracyMm(), options(m),
                new FormClearance(m.getFormClearanceUpMm(), m.getFormClearanceDownMm(), m.getHoldDownDiameterMm()));
    }

    private static MachineOptions options(punchwright.model.shop.Machine m) {
        return m.getOptions() == null ? MachineOptions.NONE
                : new MachineOptions(m.getOptions().isLubrication(), m.getOptions().isSlugSuction());
    }

    /**
     * What stands in the machine between orders, and what making one tool ready takes: the setter's time at the setter's rate, as
     * seconds of the machine at the rate by which tools are chosen.
     */
    public static Readiness readiness(punchwright.model.shop.Machine m, Rates rates) {
        List<Readiness.Standing> standing = m.getStanding().stream().filter(s -> s.getTool() != null && s.getPlace() != null)
                .map(s -> new Readiness.Standing(s.getPlace().getId(), s.getTool().getId(),
                        s.getHolder() == null ? null : s.getHolder().getId())).toList();
        double share = rates == null ? 0 : rates.getSetUpPerHour() / ChoiceWeights.USUAL.ratePerHour();
        return new Readiness(standing, rates == null ? Readiness.USUAL.loadSeconds()
                : Math.max(0, 60 * rates.getSetUpMinutesPerTool() * share), 1);
    }

    private static List<Place> places(punchwright.model.shop.Machine m) {
        return m.getPlaces().stream().map(p -> new Place(p.getId(), p.getMaxToolDiameterMm(),
                (p.getForceLimitKn() > 0 ? p.getForceLimitKn() : m.getPressForceKn()) * N_PER_KN, p.isTurns(),
                p.getTurnAccuracyMm(), p.getAccepts().isEmpty() || p.getAccepts().contains(ToolFamily.HOLDER))).toList();
    }

    private static Clamps clamps(punchwright.model.shop.Clamps c) {
        return new Clamps(c.getCount(), c.getWidthMm(), c.getDepthMm(), c.getDeadZoneMm(), c.getTravelMinXMm(),
                c.getTravelMaxXMm(), c.getLeastSpacingMm());
    }

    private static Times times(punchwright.model.shop.Machine m) {
        ChangeKind automatic = m.getHeadKind() == punchwright.model.shop.HeadKind.TURRET ? ChangeKind.TURRET_INDEX
                : ChangeKind.MAGAZINE;
        double byHand = change(m, ChangeKind.BY_HAND, 0);
        return new Times(m.getSettlingTimeS(), m.getStrokeTimeS(), m.getNibblingRatePerMin(), m.getNibblingMaxPitchMm(),
                change(m, automatic, byHand), byHand, change(m, ChangeKind.INSERT_TURN, 0), m.getTurnSpeedDegPerS(),
                m.getRepositionTimeS(), m.getTurnOverTimeS(), m.getLoadTimeS(), m.getUnloadTimeS(), m.getPartRemovalTimeS());
    }

    private static double change(punchwright.model.shop.Machine m, ChangeKind kind, double otherwise) {
        return m.getChangeTimes().stream().filter(c -> c.getKind() == kind).mapToDouble(ChangeTime::getTimeS).findFirst()
                .orElse(otherwise);
    }
}
