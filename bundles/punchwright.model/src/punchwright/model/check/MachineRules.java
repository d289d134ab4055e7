// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import punchwright.model.shop.ChangeKind;
import punchwright.model.shop.ChangeTime;
import punchwright.model.shop.Clamps;
import punchwright.model.shop.HeadKind;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MachineRate;
import punchwright.model.shop.Place;
import punchwright.model.shop.ShopPackage.Literals;

/** Rules for a machine, its places and its clamps. */
final class MachineRules {

    private MachineRules() {
    }

    static void addTo(Rules.Rows rows) {
        sizes(rows);
        places(rows);
        clamps(rows);
        times(rows);
        plausible(rows);
    }

    private static void sizes(Rules.Rows rows) {
        rows.error("PW-M-020", Machine.class, (m, r) -> {
            if (m.getMaxThicknessMm() < m.getMinThicknessMm()) {
                r.add(Literals.MACHINE__MAX_THICKNESS_MM, m.getMaxThicknessMm(), m.getMinThicknessMm());
            }
        });
        rows.error("PW-M-021", Machine.class, (m, r) -> {
            if (m.getLongestSheetMm() < m.getTravelXMm()) {
                r.add(Literals.MACHINE__LONGEST_SHEET_MM, m.getLongestSheetMm(), m.getTravelXMm());
            }
        });
        rows.warning("PW-M-022", Machine.class, (m, r) -> {
            if (m.getTravelYMm() > m.getThroatDepthMm()) {
                r.add(Literals.MACHINE__TRAVEL_YMM, m.getTravelYMm(), m.getThroatDepthMm());
            }
        });
        rows.error("PW-M-023", Machine.class, (m, r) -> {
            if (m.getLongestSheetMm() > m.getTravelXMm() && m.getRepositionTimeS() == 0) {
                r.add(Literals.MACHINE__REPOSITION_TIME_S, m.getLongestSheetMm(), m.getTravelXMm());
            }
        });
        rows.error("PW-M-024", Machine.class, (m, r) -> {
            if (m.getWidestSheetMm() > m.getTravelYMm() && m.getTurnOverTimeS() == 0) {
                r.add(Literals.MACHINE__TURN_OVER_TIME_S, m.getWidestSheetMm(), m.getTravelYMm());
            }
        });
    }

    private static void places(Rules.Rows rows) {
        rows.error("PW-M-025", Machine.class, (m, r) -> {
            if (m.getPlaces().isEmpty()) {
                r.add(Literals.MACHINE__PLACES);
            }
        });
        rows.warning("PW-M-026", Place.class, (p, r) -> {
            if (p.eContainer() instanceof Machine m && p.getForceLimitKn() > m.getPressForceKn()) {
                r.add(Literals.PLACE__FORCE_LIMIT_KN, p.getForceLimitKn(), m.getPressForceKn());
            }
        });
        rows.error("PW-M-027", Machine.class, (m, r) -> {
            if (m.getTurnSpeedDegPerS() == 0 && m.getPlaces().stream().anyMatch(Place::isTurns)) {
                r.add(Literals.MACHINE__TURN_SPEED_DEG_PER_S);
            }
        });
        rows.warning("PW-M-028", Place.class, (p, r) -> {
            if (p.isTurns() && p.getTurnAccuracyMm() == 0) {
                r.add(Literals.PLACE__TURN_ACCURACY_MM);
            }
        });
        rows.error("PW-M-029", Machine.class, MachineRules::indexPositionsOnce);
    }

    private static void indexPositionsOnce(Machine machine, Report report) {
        Map<Integer, Place> seen = new HashMap<>();
        for (Place place : machine.getPlaces()) {
            Place first = place.getIndexPosition() == 0 ? null : seen.putIfAbsent(place.getIndexPosition(), place);
            if (first != null) {
                report.on(place, Literals.PLACE__INDEX_POSITION, place.getIndexPosition(), first);
            }
        }
    }

    private static void clamps(Rules.Rows rows) {
        rows.error("PW-M-030", Machine.class, (m, r) -> {
            if (m.getClamps() == null) {
                r.add(Literals.MACHINE__CLAMPS);
            }
        });
        rows.error("PW-M-031", Clamps.class, (c, r) -> {
            if (c.getCount() > c.getMaxCount()) {
                r.add(Literals.CLAMPS__COUNT, c.getCount(), c.getMaxCount());
            }
        });
        rows.error("PW-M-032", Clamps.class, (c, r) -> {
            if (c.getTravelMaxXMm() <= c.getTravelMinXMm()) {
                r.add(Literals.CLAMPS__TRAVEL_MAX_XMM, c.getTravelMaxXMm(), c.getTravelMinXMm());
            }
        });
        rows.error("PW-M-033", Clamps.class, (c, r) -> {
            if (c.getLeastSpacingMm() < c.getWidthMm()) {
                r.add(Literals.CLAMPS__LEAST_SPACING_MM, c.getLeastSpacingMm(), c.getWidthMm());
            }
        });
        rows.error("PW-M-034", Clamps.class, (c, r) -> {
            double need = (c.getCount() - 1) * c.getLeastSpacingMm();
            double have = c.getTravelMaxXMm() - c.getTravelMinXMm();
            if (have > 0 && need > have) {
                r.add(Literals.CLAMPS__COUNT, c.getCount(), need, have);
            }
        });
    }

    private static void times(Rules.Rows rows) {
        rows.error("PW-M-035", Machine.class, MachineRules::changeTimesThere);
        rows.error("PW-M-036", Machine.class, MachineRules::changeTimesOnce);
        rows.error("PW-M-037", Machine.class, (m, r) -> {
            if ((m.getNibblingRatePerMin() > 0) != (m.getNibblingMaxPitchMm() > 0)) {
                r.add(Literals.MACHINE__NIBBLING_MAX_PITCH_MM, m.getNibblingRatePerMin(), m.getNibblingMaxPitchMm());
            }
        });
        rows.warning("PW-M-038", Machine.class, (m, r) -> {
            if (m.getOptions() != null && m.getOptions().isPartFlap() && (m.getDropLengthMm() == 0 || m.getDropWidthMm() == 0)) {
                r.add(Literals.MACHINE__DROP_LENGTH_MM);
            }
        });
        rows.warning("PW-M-039", Machine.class, (m, r) -> {
            if (m.getRate() == null) {
                r.add(Literals.MACHINE__RATE);
            }
        });
        rows.warning("PW-M-040", MachineRate.class, (rate, r) -> {
            if (rate.getReplacementValue() <= rate.getResidualValue()) {
                r.add(Literals.MACHINE_RATE__REPLACEMENT_VALUE, rate.getReplacementValue(), rate.getResidualValue());
            }
        });
    }

    private static void changeTimesThere(Machine machine, Report report) {
        Set<ChangeKind> have = EnumSet.noneOf(ChangeKind.class);
        machine.getChangeTimes().forEach(c -> have.add(c.getKind()));
        if (machine.getHeadKind() == HeadKind.TURRET && !have.contains(ChangeKind.TURRET_INDEX)) {
            report.add(Literals.MACHINE__CHANGE_TIMES, ChangeKind.TURRET_INDEX);
        }
        if (machine.getHeadKind() == HeadKind.SINGLE_HEAD && !have.contains(ChangeKind.MAGAZINE)
                && !have.contains(ChangeKind.BY_HAND)) {
            report.add(Literals.MACHINE__CHANGE_TIMES, ChangeKind.BY_HAND);
        }
    }

    private static void changeTimesOnce(Machine machine, Report report) {
        Set<ChangeKind> seen = EnumSet.noneOf(ChangeKind.class);
        for (ChangeTime change : machine.getChangeTimes()) {
            if (!seen.add(change.getKind())) {
                report.on(change, Literals.CHANGE_TIME__KIND, change.getKind());
            }
        }
    }

    /** Slips of unit: a value in m/s, m/s2 or t where mm/s, mm/s2 or kN is wanted. Common practice, no source. */
    private static void plausible(Rules.Rows rows) {
        rows.warning("PW-M-041", Machine.class, (m, r) -> {
            double slower = Math.min(m.getMaxSpeedXMmPerS(), m.getMaxSpeedYMmPerS());
            double faster = Math.max(m.getMaxSpeedXMmPerS(), m.getMaxSpeedYMmPerS());
            if (slower > 0 && (slower < 50 || faster > 5000)) {
                r.add(Literals.MACHINE__MAX_SPEED_XMM_PER_S, slower, faster);
            }
        });
        rows.warning("PW-M-042", Machine.class, (m, r) -> {
            double slower = Math.min(m.getAccelerationXMmPerS2(), m.getAccelerationYMmPerS2());
            double faster = Math.max(m.getAccelerationXMmPerS2(), m.getAccelerationYMmPerS2());
            if (slower > 0 && (slower < 200 || faster > 50_000)) {
                r.add(Literals.MACHINE__ACCELERATION_XMM_PER_S2, slower, faster);
            }
        });
        rows.warning("PW-M-043", Machine.class, (m, r) -> {
            if (m.getPressForceKn() > 0 && (m.getPressForceKn() < 50 || m.getPressForceKn() > 1000)) {
                r.add(Literals.MACHINE__PRESS_FORCE_KN, m.getPressForceKn());
            }
        });
        rows.warning("PW-M-044", Machine.class, (m, r) -> {
            if (m.getNibblingRatePerMin() > 3000) {
                r.add(Literals.MACHINE__NIBBLING_RATE_PER_MIN, m.getNibblingRatePerMin());
            }
        });
    }
}
