// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.Tool;

/** Puts the hits of one holding into runs, and the runs into groups of one tool and one kind of work. */
final class Grouping {

    private record Key(WorkKind kind, int tool) {
    }

    private final List<SheetHit> forms;
    private final OuterOperations outer;

    private Grouping(List<SheetHit> hits, OuterOperations outer) {
        this.forms = hits.stream().filter(h -> h.role() == HitRole.FORM).toList();
        this.outer = outer;
    }

    /** @param hits  of one holding */
    static List<ToolGroup> of(List<SheetHit> hits, OuterOperations outer) {
        Grouping grouping = new Grouping(hits, outer);
        Map<Key, List<HitRun>> groups = new LinkedHashMap<>();
        for (HitRun run : runs(hits)) {
            groups.computeIfAbsent(new Key(grouping.kind(run), run.first().use().number()), k -> new ArrayList<>()).add(run);
        }
        return groups.entrySet().stream()
                .map(e -> new ToolGroup(e.getKey().kind, e.getValue().getFirst().first().use(), e.getValue())).toList();
    }

    /** Neighbouring nibbling or slitting hits of one operation on one placement stay together; all others stand alone. */
    static List<HitRun> runs(List<SheetHit> hits) {
        List<HitRun> runs = new ArrayList<>();
        List<SheetHit> open = new ArrayList<>();
        for (SheetHit hit : hits) {
            if (!open.isEmpty() && !goesOn(open.getLast(), hit)) {
                runs.add(new HitRun(open));
                open.clear();
            }
            open.add(hit);
        }
        if (!open.isEmpty()) {
            runs.add(new HitRun(open));
        }
        return runs;
    }

    private static boolean goesOn(SheetHit a, SheetHit b) {
        return a.role() == b.role() && (a.role() == HitRole.NIBBLE || a.role() == HitRole.SLIT)
                && a.placement() == b.placement() && a.operation() == b.operation()
                && a.use().number() == b.use().number();
    }

    private WorkKind kind(HitRun run) {
        return switch (run.first().role()) {
            case PIERCE -> WorkKind.OPENING;
            case NIBBLE -> outer.contains(run.first()) ? outerKind(run) : WorkKind.OPENING;
            case FORM -> WorkKind.FORM;
            case SLIT -> outerKind(run);
        };
    }

    private WorkKind outerKind(HitRun run) {
        return run.hits().stream().anyMatch(this::nearForm) ? WorkKind.SLIT_NEAR_FORM : WorkKind.SEPARATING;
    }

    private boolean nearForm(SheetHit hit) {
        return forms.stream().anyMatch(f -> near(f, hit));
    }

    /** Whether a cut lies so near to a form that it would strike it. */
    static boolean near(SheetHit form, SheetHit cut) {
        return form.at().distance(cut.at()) < reachMm(form.use().tool()) + reachMm(cut.use().tool())
                + PrecedenceRules.FORM_KEEP_OUT_MM;
    }

    /** Radius of a circle about the tool axis that holds the punch, from above, in mm. */
    private static double reachMm(Tool tool) {
        double longest = tool.cluster().stream().mapToDouble(Point::norm).max().orElse(0);
        return longest + Math.hypot(tool.lengthMm(), tool.widthMm()) / 2;
    }
}
