// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;

/**
 * Which tool stands in which place.
 *
 * <p>Each tool becomes one stand, or one for each angle where it cannot turn. Stands get places by a matching that is largest
 * possible; while some are left over, small tools move into a multi-tool holder and the matching is made again. What still has no
 * place is set by hand on a machine with one head, and refused on a turret.
 */
public final class ToolLoading {

    private final Machine machine;
    private final List<Holder> holders;
    private final double reserve;
    private final List<Finding> findings = new ArrayList<>();

    private ToolLoading(Machine machine, List<Holder> holders, double reserve) {
        this.machine = machine;
        this.holders = new ArrayList<>();
        holders.stream().sorted(Comparator.comparingInt(Holder::inserts).reversed().thenComparing(Holder::id))
                .forEach(h -> this.holders.addAll(Collections.nCopies(Math.max(0, h.onHand()), h)));
        this.reserve = reserve;
    }

    /** With the usual reserve for worn edges. */
    public static Loading load(Machine machine, List<UsedTool> tools, List<Holder> holders) {
        return load(machine, tools, holders, ToolingRules.USUAL.forceReserve());
    }

    /**
     * @param reserve factor on each force against the limits of places and holders
     */
    public static Loading load(Machine machine, List<UsedTool> tools, List<Holder> holders, double reserve) {
        return new ToolLoading(machine, holders, reserve).run(tools);
    }

    private Loading run(List<UsedTool> tools) {
        List<Stand> stands = new ArrayList<>();
        Seats seats = new Seats(machine, holders);
        for (UsedTool used : tools) {
            double diameter = ToolFootprint.circumscribedDiameterMm(used.tool());
            seats.refusal(used.tool().name(), diameter, used.forceN() * reserve)
                    .ifPresentOrElse(findings::add, () -> stands.addAll(stands(used, seats)));
        }
        stands.sort(Comparator.comparing((Stand s) -> !s.needsTurn()).thenComparing(Stand::hits, Comparator.reverseOrder()));
        List<Stand> packed = pack(stands);
        return new Loading(uses(packed, new PlaceMatching(machine.places(), packed).placeOf()), findings);
    }

    /** One stand, or one for each setting of a tool that cannot turn; none with a finding when it cannot be set. */
    private List<Stand> stands(UsedTool used, Seats seats) {
        Tool tool = used.tool();
        int order = ToolFootprint.symmetryOrder(tool);
        TreeMap<Double, Double> settings = new TreeMap<>();
        Double impossible = null;
        for (double a : used.anglesDeg()) {
            OptionalDouble set = AngleFit.angleDeg(tool, false, a);
            settings.put(AngleFit.canonicalDeg(a, order), set.orElse(0));
            if (set.isEmpty()) {
                impossible = a;
            }
        }
        double diameter = ToolFootprint.circumscribedDiameterMm(tool);
        boolean turnable = tool.freedom() == AngleFreedom.ANY
                && seats.fitting(diameter, used.forceN() * reserve).stream().anyMatch(Seat::turns);
        if (turnable && (impossible != null || settings.size() > 1)) {
            return List.of(Stand.alone(used, 0, true, reserve));
        }
        if (impossible != null) {
            findings.add(Finding.of(ToolingReason.ANGLE, tool.name(), impossible, tool.name()));
            return List.of();
        }
        if (settings.size() > tool.onHand()) {
            findings.add(Finding.of(ToolingReason.ANGLES, tool.name(), tool.name(), settings.size(), tool.onHand()));
            return List.of();
        }
        return settings.values().stream().map(a -> Stand.alone(used, a, false, reserve)).toList();
    }

    /** Moves small tools into holders until every stand has a place or no holder helps. */
    private List<Stand> pack(List<Stand> stands) {
        List<Stand> packed = stands;
        int without = without(packed);
        for (Holder holder : holders) {
            if (without == 0) {
                return packed;
            }
            List<Stand> next = withHolder(packed, holder);
            int left = without(next);
            if (left < without) {
                packed = next;
                without = left;
            }
        }
        return packed;
    }

    private static List<Stand> withHolder(List<Stand> stands, Holder holder) {
        List<Stand> inserts = stands.stream().filter(s -> s.fits(holder))
                .sorted(Comparator.comparingDouble(Stand::diameterMm).thenComparing(s -> s.used().tool().id())
                        .thenComparing(Stand::angleDeg))
                .limit(holder.inserts()).toList();
        List<Stand> next = new ArrayList<>(stands);
        next.removeAll(inserts);
        if (!inserts.isEmpty()) {
            next.addFirst(Stand.of(holder, inserts));
        }
        return next;
    }

    /** Tools without a place. */
    private int without(List<Stand> stands) {
        int[] at = new PlaceMatching(machine.places(), stands).placeOf();
        int without = 0;
        for (int i = 0; i < at.length; i++) {
            without += at[i] >= 0 ? 0 : Math.max(1, stands.get(i).inserts().size());
        }
        return without;
    }

    private List<ToolUse> uses(List<Stand> stands, int[] placeOf) {
        List<ToolUse> uses = new ArrayList<>();
        for (int p = 0; p < machine.places().size(); p++) {
            for (int i = 0; i < placeOf.length; i++) {
                if (placeOf[i] == p) {
                    addStand(stands.get(i), machine.places().get(p), uses);
                }
            }
        }
        for (int i = 0; i < placeOf.length; i++) {
            if (placeOf[i] < 0) {
                addWithoutPlace(stands.get(i), uses);
            }
        }
        return uses;
    }

    private static void addStand(Stand stand, Place place, List<ToolUse> uses) {
        if (stand.holder() == null) {
            uses.add(use(stand, uses.size() + 1, place, null, 0));
        }
        for (int i = 0; i < stand.inserts().size(); i++) {
            uses.add(use(stand.inserts().get(i), uses.size() + 1, place, stand.holder(), i + 1));
        }
    }

    private static ToolUse use(Stand stand, int number, Place place, Holder holder, int insert) {
        Tool tool = stand.used().tool();
        boolean turning = ToolFootprint.symmetryOrder(tool) != 0 && tool.freedom() == AngleFreedom.ANY
                && new Seat(place, holder).turns();
        return new ToolUse(number, tool, place, holder, insert, turning, turning ? 0 : stand.angleDeg());
    }

    /** Whether a tool set by hand into the one head can be turned there: when a place that takes it turns. */
    private boolean headTurns(Stand s) {
        return machine.places().stream().anyMatch(p -> p.turns() && s.diameterMm() <= p.maxToolDiameterMm() + 1e-6
                && s.forceN() <= p.forceLimitN());
    }

    private void addWithoutPlace(Stand stand, List<ToolUse> uses) {
        List<Stand> tools = stand.holder() == null ? List.of(stand) : stand.inserts();
        for (Stand s : tools) {
            Tool tool = s.used().tool();
            boolean turning = ToolFootprint.symmetryOrder(tool) != 0 && tool.freedom() == AngleFreedom.ANY && headTurns(s);
            if (machine.headKind() == HeadKind.SINGLE_HEAD && (turning || !s.needsTurn())) {
                findings.add(Finding.of(ToolingReason.BY_HAND, tool.name(), tool.name()));
                uses.add(new ToolUse(uses.size() + 1, tool, null, null, 0, turning, turning ? 0 : s.angleDeg()));
            } else {
                findings.add(Finding.of(ToolingReason.NO_PLACE, tool.name(), tool.name(), s.forceN() / 1000));
            }
        }
    }
}
