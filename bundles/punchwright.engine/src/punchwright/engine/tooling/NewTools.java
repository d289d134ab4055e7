// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Segment;
import punchwright.engine.press.Place;
import punchwright.engine.press.SmallestFeature;

/**
 * Tools not owned that may make a feature, the likeliest first, each with the die that the sheet needs: the exact tool, a round
 * one for the smallest inside radius, rectangular ones for the shortest edge between two inside corners, a corner-radius tool,
 * and slitting tools by length. Only such as the sheet, machine and places take at all.
 */
final class NewTools {

    /** Tools offered for one feature on one sheet and machine. */
    private static final int MOST = 10;
    /** Usual width of a slitting tool, and from which length a narrow tool is called one, mm. Common practice, no source. */
    private static final double USUAL_WIDTH_MM = 5;
    private static final double SLITTING_MM = 40;
    private static final double[] LENGTHS_MM = { 100, 76, 56, 40, 30, 20, 15, 10 };

    private final ToolingJob job;
    private final Feature feature;
    private final Map<String, ToolSize> sizes = new LinkedHashMap<>();

    private NewTools(ToolingJob job, Feature feature) {
        this.job = job;
        this.feature = feature;
    }

    static List<Tool> of(ToolingJob job, Feature feature) {
        NewTools all = new NewTools(job, feature);
        ExactTool.of(feature, job.machine()).ifPresent(all::add);
        if (!feature.path().isEmpty() && feature.form().isEmpty()) {
            all.along(EdgePath.of(feature, job.features().shape()));
        }
        List<Double> die = List.of(Trial.dieMm(job));
        return all.sizes.values().stream().map(s -> s.make(s.shape().forms() ? List.of() : die, job.tools(), 0))
                .filter(t -> new ToolLimits(job.with(t), Set.of()).refusal(t) == null).limit(MOST).toList();
    }

    /** A new tool as a way out, with its force on the job's sheet against what the strongest place for it carries. */
    static WayOut way(ToolingJob job, Tool t) {
        UsableTool u = new ToolLimits(job.with(t), Set.of()).usable().getFirst();
        double force = u.forceN() * job.rules().forceReserve();
        double most = new Seats(job.machine(), job.holders()).strongestN(ToolFootprint.circumscribedDiameterMm(t));
        return new WayOut(Kind.TOOL, t.lengthMm(), t.shape().name(), t.name(), List.of(t.lengthMm() == t.widthMm() ? 0
                : t.widthMm(), t.cornerRadiusMm(), t.fixedAngleDeg(), t.shape().forms() ? 0 : t.clearancesTotalMm().getFirst(),
                force / 1000, 100 * force / most), List.of());
    }

    private void add(ToolSize size) {
        if (size.lengthMm() >= 0.5 && size.widthMm() >= 0.5) {
            sizes.putIfAbsent(size.id(), size);
        }
    }

    private void along(EdgePath path) {
        double least = leastMm();
        for (Segment s : path.segments()) {
            if (s instanceof Arc arc && arc.sweepRad() > 0) {
                add(ToolSize.plain(ToolShape.CORNER_RADIUS, 2 * arc.radiusMm(), 2 * arc.radiusMm(), arc.radiusMm(), 0));
            }
        }
        double radius = path.segments().stream().filter(s -> s instanceof Arc a && a.sweepRad() < 0)
                .mapToDouble(s -> ((Arc) s).radiusMm()).min().orElse(0);
        if (radius > 0) {
            round(2 * radius);
        }
        double closed = closedIn(path);
        double most = Math.min(closed, feature.isOpening() ? Math.min(feature.lengthMm(), feature.widthMm()) : closed);
        if (Double.isFinite(most)) {
            slices(most);
        }
        slitting(Math.min(most, Math.max(USUAL_WIDTH_MM, least)));
        round(Math.max(3, Math.ceil(2 * least) / 2));
        add(ToolSize.sides(Math.ceil(2 * least) / 2, Math.ceil(2 * least) / 2));
    }

    private double leastMm() {
        return Math.max(SmallestFeature.byCustomMm(job.material(), job.thicknessMm()), SmallestFeature.byStressMm(job
                .thicknessMm(), job.material().shearMPa(), SmallestFeature.PERMITTED_STRESS_MPA));
    }

    /** Shortest straight edge that ends in an inside corner on both sides, mm; infinite where there is none. */
    private static double closedIn(EdgePath path) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < path.segments().size(); i++) {
            boolean in = path.startOf(i) == EdgePath.End.FLUSH && path.endOf(i) == EdgePath.End.FLUSH;
            if (in && path.segments().get(i) instanceof Line) {
                least = Math.min(least, path.segments().get(i).lengthMm());
            }
        }
        return least;
    }

    /** A round tool that fits, and a smaller one that nibbles. */
    private void round(double diameter) {
        add(ToolSize.plain(ToolShape.ROUND, diameter, diameter, 0, 0));
        add(ToolSize.plain(ToolShape.ROUND, Math.floor(diameter), Math.floor(diameter), 0, 0));
    }

    /** Tools as wide as the narrow place and ever shorter, the longest first, down to a square; then smaller squares. */
    private void slices(double width) {
        List<Double> lengths = new ArrayList<>();
        for (int n = 1; n <= 4 && feature.lengthMm() / n > width; n++) {
            lengths.add(n == 1 ? feature.lengthMm() : Math.ceil(feature.lengthMm() / n + 2));
        }
        lengths.stream().sorted(Comparator.reverseOrder()).forEach(l -> add(ToolSize.sides(l, width)));
        add(ToolSize.sides(width, width));
        add(ToolSize.sides(Math.ceil(width / 2 + 1), Math.ceil(width / 2 + 1)));
    }

    /** The longest of the usual lengths that a place takes and the press drives, with two shorter ones for narrow places. */
    private void slitting(double width) {
        double place = job.machine().places().stream().mapToDouble(Place::maxToolDiameterMm).max().orElse(0);
        DoubleStream.of(LENGTHS_MM).filter(l -> l > width && Math.hypot(l, width) <= place)
                .forEach(l -> add(ToolSize.plain(l >= SLITTING_MM ? ToolShape.SLITTING : ToolShape.RECTANGLE, l, width, 0, 0)));
    }
}
