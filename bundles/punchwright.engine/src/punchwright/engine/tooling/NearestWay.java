// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.press.Machine;

/**
 * The nearest ways out of a refusal, by one change or two. Nothing is worked out backwards: machine, tool, die, thickness and
 * material are changed and the rule that refused is asked again, so that a way out is one by construction.
 *
 * <p>What the shop can do by itself comes first, then what changes the order. Thickness is looked for within the machine's
 * range, nearest first and ever finer down to 0.01 mm; clearance windows make the answer not monotonic, so that no bisection
 * would do.
 */
final class NearestWay {

    /** Steps of the thickness, each finer than the one before, for a tool and for a feature, where a question takes longer. */
    static final double[] OF_TOOL_MM = { 0.1, 0.01 };
    static final double[] OF_FEATURE_MM = { 0.5, 0.1, 0.01 };
    /** Changes of sheet and machine. */
    static final Set<Kind> AROUND = EnumSet.of(Kind.MACHINE, Kind.THINNER, Kind.MATERIAL);
    /** Changes of the tool itself. */
    static final Set<Kind> OF_TOOL = EnumSet.of(Kind.SHEAR, Kind.DIE, Kind.NEW_TOOL);
    /** Other machines named for one refusal at most; of materials the first that does. */
    private static final int MOST_NAMES = 2;
    private static final int MOST_PAIRS = 2;
    private static final double SHEAR_STEP_MM = 0.5;

    private final double[] stepsMm;

    NearestWay(double[] stepsMm) {
        this.stepsMm = stepsMm;
    }

    /** For a tool that is refused for everything: one change; where none is enough two, or a new tool, its die and a third. */
    static List<WayOut> ofTool(Trial refused) {
        NearestWay search = new NearestWay(OF_TOOL_MM);
        Set<Kind> all = EnumSet.copyOf(AROUND);
        all.addAll(OF_TOOL);
        List<WayOut> ways = search.one(refused, all, NearestWay::works);
        if (ways.isEmpty()) {
            ways = search.two(refused, NearestWay::works);
        }
        if (ways.isEmpty()) {
            ways = search.with(refused, all, NearestWay::works, t -> t.fresh().and(t.die()));
        }
        return ways.isEmpty() ? List.of(none(refused.job())) : ways;
    }

    private static boolean works(Trial t) {
        return t.job().thicknessFits() && new ToolLimits(t.job().with(t.tool()), Set.of()).refusal(t.tool()) == null;
    }

    private static WayOut none(ToolingJob job) {
        long materials = job.elsewhere().materials().stream().filter(m -> !m.id().equals(job.material().id())).count();
        return new WayOut(Kind.NONE, 0, "", "", List.of((double) others(job).size(), (double) materials), List.of());
    }

    /** For a sheet that the machine does not take. */
    static List<WayOut> ofSheet(ToolingJob job) {
        Predicate<Trial> fits = t -> t.job().thicknessFits();
        List<WayOut> ways = new NearestWay(OF_TOOL_MM).one(new Trial(job, null), EnumSet.of(Kind.MACHINE, Kind.THINNER), fits);
        if (ways.stream().noneMatch(w -> w.kind() == Kind.MACHINE)) {
            List<Machine> asked = new ArrayList<>(others(job));
            asked.add(job.machine());
            double most = asked.stream().mapToDouble(Machine::maxThicknessMm).max().orElse(0);
            ways.add(new WayOut(Kind.OTHER_PROCESS, most < job.thicknessMm() ? most : 0, "", "",
                    List.of((double) asked.size(), 0.0), List.of()));
        }
        return ways;
    }

    /** For a tool that cannot be set to an angle: the smallest turn of the part with which it can. */
    static List<WayOut> ofAngle(Tool tool, boolean turning, double neededDeg) {
        double period = 360.0 / Math.max(1, ToolFootprint.symmetryOrder(tool));
        double best = Double.NaN;
        for (int i = 0; i < (tool.freedom() == AngleFreedom.FIXED ? 1 : 4); i++) {
            double turn = Math.IEEEremainder(tool.fixedAngleDeg() + 90 * i - neededDeg, period);
            boolean set = AngleFit.angleDeg(tool, turning, neededDeg + turn).isPresent();
            best = set && !(Math.abs(best) <= Math.abs(turn) + 1e-9) ? turn : best;
        }
        return Double.isNaN(best) ? List.of() : List.of(WayOut.of(Kind.TURN_PART, best));
    }

    /** The job's other machines. */
    static List<Machine> others(ToolingJob job) {
        return job.elsewhere().machines().stream().filter(m -> !m.id().equals(job.machine().id())).toList();
    }

    /** Each single change of these kinds that is enough. */
    List<WayOut> one(Trial from, Set<Kind> kinds, Predicate<Trial> works) {
        List<WayOut> ways = new ArrayList<>();
        Predicate<WayOut> enough = w -> works.test(from.with(w));
        if (kinds.contains(Kind.MACHINE)) {
            others(from.job()).stream().map(from::on).filter(enough).limit(MOST_NAMES).forEach(ways::add);
        }
        if (from.tool() != null && !from.tool().shape().forms()) {
            if (kinds.contains(Kind.SHEAR) && from.tool().shear() == ShearKind.FLAT) {
                shear(from.job().thicknessMm(), enough, ways);
            }
            add(kinds.contains(Kind.DIE), from.die(), enough, ways);
        }
        add(from.tool() != null && kinds.contains(Kind.NEW_TOOL), from.tool() == null ? null : from.fresh(), enough, ways);
        if (kinds.contains(Kind.THINNER)) {
            ways.addAll(thickness(from.job(), enough));
        }
        if (kinds.contains(Kind.MATERIAL)) {
            from.job().elsewhere().materials().stream().filter(m -> !m.id().equals(from.job().material().id()))
                    .map(m -> new WayOut(Kind.MATERIAL, 0, m.id(), m.grade())).filter(enough).limit(1)
                    .forEach(ways::add);
        }
        return ways;
    }

    private static void add(boolean wanted, WayOut way, Predicate<WayOut> enough, List<WayOut> ways) {
        if (wanted && enough.test(way)) {
            ways.add(way);
        }
    }

    /** Two changes where none alone is enough: two of the tool, one of the tool and one around it, two around it. */
    List<WayOut> two(Trial from, Predicate<Trial> works) {
        List<WayOut> ways = new ArrayList<>();
        if (from.tool() != null) {
            ways.addAll(with(from, EnumSet.of(Kind.SHEAR, Kind.DIE), works, Trial::fresh));
            ways.addAll(with(from, EnumSet.of(Kind.SHEAR), works, Trial::die));
            for (Function<Trial, WayOut> own : List.<Function<Trial, WayOut>>of(Trial::fresh, Trial::die)) {
                if (ways.isEmpty()) {
                    ways.addAll(with(from, AROUND, works, own));
                }
            }
        }
        List<WayOut> around = ways.isEmpty() ? one(from, AROUND, t -> true) : List.of();
        for (WayOut first : around) {
            Set<Kind> rest = EnumSet.copyOf(AROUND);
            rest.remove(first.kind() == Kind.THICKER ? Kind.THINNER : first.kind());
            if (first.kind() == Kind.MACHINE) {
                one(from.with(first), rest, works).forEach(w -> ways.add(first.and(w)));
            }
        }
        if (ways.isEmpty() && from.job().elsewhere().materials().size() > 1) {
            around.stream().filter(w -> w.kind() == Kind.MATERIAL).forEach(first -> one(from.with(first),
                    EnumSet.of(Kind.THINNER), works).forEach(w -> ways.add(first.and(w))));
        }
        return ways.subList(0, Math.min(MOST_PAIRS, ways.size()));
    }

    /** One change of these kinds with another that depends on what the first leaves, as the die does on the thickness. */
    List<WayOut> with(Trial from, Set<Kind> kinds, Predicate<Trial> works, Function<Trial, WayOut> second) {
        return one(from, kinds, t -> works.test(t.with(second.apply(t)))).stream()
                .map(w -> w.and(second.apply(from.with(w)))).limit(MOST_PAIRS).toList();
    }

    private static void shear(double thicknessMm, Predicate<WayOut> enough, List<WayOut> ways) {
        for (double h = SHEAR_STEP_MM; h <= 2 * thicknessMm + 1e-9; h += SHEAR_STEP_MM) {
            WayOut way = WayOut.of(Kind.SHEAR, h);
            if (enough.test(way)) {
                ways.add(way);
                return;
            }
        }
    }

    /** Thinner, or where no thinner sheet does, thicker. */
    private List<WayOut> thickness(ToolingJob job, Predicate<WayOut> enough) {
        OptionalDouble thinner = nearest(job, Kind.THINNER, enough);
        if (thinner.isPresent()) {
            return List.of(WayOut.of(Kind.THINNER, thinner.getAsDouble()));
        }
        OptionalDouble thicker = nearest(job, Kind.THICKER, enough);
        return thicker.isPresent() ? List.of(WayOut.of(Kind.THICKER, thicker.getAsDouble())) : List.of();
    }

    /** The nearest thickness in one direction at which it works, mm. */
    private OptionalDouble nearest(ToolingJob job, Kind kind, Predicate<WayOut> enough) {
        Machine m = job.machine();
        int sign = kind == Kind.THINNER ? -1 : 1;
        double from = Math.clamp(job.thicknessMm(), m.minThicknessMm(), m.maxThicknessMm());
        for (double t = from; t >= m.minThicknessMm() - 1e-9 && t <= m.maxThicknessMm() + 1e-9; t += sign * stepsMm[0]) {
            double best = rounded(t, sign);
            if (sign * (best - job.thicknessMm()) > 1e-9 && enough.test(WayOut.of(kind, best))) {
                for (int i = 1; i < stepsMm.length; i++) {
                    best = finest(enough, kind, best, sign, i);
                }
                return OptionalDouble.of(best);
            }
        }
        return OptionalDouble.empty();
    }

    /** From a thickness that works back towards the job's own while it does, in steps number {@code step}. */
    private double finest(Predicate<WayOut> enough, Kind kind, double good, int sign, int step) {
        double best = good;
        for (int i = 1; i * stepsMm[step] < stepsMm[step - 1] - 1e-9; i++) {
            double next = rounded(good - sign * i * stepsMm[step], sign);
            if (!enough.test(WayOut.of(kind, next))) {
                return best;
            }
            best = next;
        }
        return best;
    }

    /** To the hundredth on the side that works. */
    private static double rounded(double mm, int sign) {
        return (sign < 0 ? Math.floor(100 * mm + 1e-6) : Math.ceil(100 * mm - 1e-6)) / 100;
    }
}
