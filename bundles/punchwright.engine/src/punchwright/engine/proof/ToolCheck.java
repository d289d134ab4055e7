// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/**
 * Limits of the tools used: force of press, place and holder, smallest punch, die clearance, place, angle, life.
 *
 * <p>Force: F = L t tau over the whole outline; a punch ground with a roof or slope of height h needs K t / (K t + h) of it,
 * never less than half, K the share of the thickness at which the sheet breaks. Sources: Hellwig, Semlinger, Spanlose
 * Fertigung: Stanzen; P. C. Sharma, Production Engineering (from memory).
 */
final class ToolCheck {

    /** Total clearance over thickness outside of which no shop punches: common practice, no source. */
    private static final double LEAST_CLEARANCE = 0.02;
    private static final double MOST_CLEARANCE = 0.55;
    private static final double LEAST_SHARE = 0.5;

    private final ProofJob job;
    private final Report report;

    ToolCheck(ProofJob job, Report report) {
        this.job = job;
        this.report = report;
    }

    void run(List<Stroke> strokes) {
        Map<String, List<Stroke>> byTool = new LinkedHashMap<>();
        strokes.forEach(s -> byTool.computeIfAbsent(s.punch().tool().id(), k -> new ArrayList<>()).add(s));
        byTool.values().forEach(this::tool);
    }

    private void tool(List<Stroke> strokes) {
        Stroke first = strokes.getFirst();
        Tool tool = first.punch().tool();
        List<ToolUse> uses = job.uses().stream().filter(u -> u.tool().id().equals(tool.id())).toList();
        if (uses.isEmpty() && !job.uses().isEmpty()) {
            report.add(ProofReason.NO_PLACE, first.at(), first.name(), tool.name());
        }
        uses.forEach(u -> place(u, first));
        if (!uses.isEmpty()) {
            strokes.forEach(s -> angle(s, uses));
        }
        if (first.cuts()) {
            cutting(tool, first);
        }
        life(tool, strokes);
    }

    private void cutting(Tool tool, Stroke first) {
        double force = forceN(tool);
        if (force > job.machine().pressForceN()) {
            report.add(ProofReason.PRESS_FORCE, first.at(), first.name(), tool.name(), force / 1000,
                    job.machine().pressForceN() / 1000);
        }
        double least = Math.max(1, job.material().minimumHoleFactor() * job.thicknessMm());
        double width = Math.min(tool.lengthMm(), tool.widthMm());
        if (tool.shape() != ToolShape.FREE_CONTOUR && width < least - 1e-6) {
            report.add(ProofReason.PUNCH_SMALL, first.at(), first.name(), tool.name(), width, least);
        }
        double t = job.thicknessMm();
        if (tool.clearancesTotalMm().stream().noneMatch(c -> c >= LEAST_CLEARANCE * t && c <= MOST_CLEARANCE * t)) {
            double nearest = tool.clearancesTotalMm().stream().mapToDouble(c -> c).max().orElse(0);
            report.add(ProofReason.CLEARANCE, first.at(), first.name(), tool.name(), nearest, t);
        }
    }

    private void place(ToolUse use, Stroke first) {
        double force = first.cuts() ? forceN(use.tool()) : 0;
        if (use.place() != null && force > use.place().forceLimitN()) {
            report.add(ProofReason.PLACE_FORCE, first.at(), first.name(), use.tool().name(), force / 1000, use.place().id(),
                    use.place().forceLimitN() / 1000);
        }
        if (use.holder() != null && force > use.holder().forceLimitN()) {
            report.add(ProofReason.PLACE_FORCE, first.at(), first.name(), use.tool().name(), force / 1000, use.holder().name(),
                    use.holder().forceLimitN() / 1000);
        }
    }

    /** Punching force of the whole outline in N. */
    double forceN(Tool tool) {
        Material m = job.material();
        double flat = Outline.lengthMm(tool) * job.thicknessMm() * m.shearMPa();
        double height = tool.shear() == ShearKind.FLAT ? 0 : Math.max(0, tool.shearHeightMm());
        double kt = breakShare(m.group()) * job.thicknessMm();
        return flat * Math.max(LEAST_SHARE, kt / (kt + height));
    }

    private static double breakShare(MaterialGroup group) {
        return switch (group) {
            case MILD_STEEL, COATED_STEEL -> 0.38;
            case HIGH_STRENGTH_STEEL -> 0.24;
            case STAINLESS_STEEL, ALUMINIUM, COPPER, BRASS -> 0.60;
        };
    }

    private void angle(Stroke s, List<ToolUse> uses) {
        boolean set = uses.stream()
                .anyMatch(u -> u.turning() || Symmetry.same(u.tool(), s.hit().angleDeg(), u.setAngleDeg(), 0.01));
        if (!set) {
            report.add(ProofReason.ANGLE, s.at(), s.name(), s.hit().id(), s.punch().tool().name(), s.hit().angleDeg());
        }
    }

    private void life(Tool tool, List<Stroke> strokes) {
        Integer perGrind = tool.hitsPerGrind().get(job.material().group());
        if (perGrind != null && perGrind > 0) {
            double left = perGrind * job.material().lifeFactor() - tool.hitsSinceGrind();
            if (strokes.size() > left) {
                report.add(ProofReason.GRIND_DUE, null, "tool " + tool.name(), tool.name(), strokes.size(), Math.max(0, left));
            }
        }
    }
}
