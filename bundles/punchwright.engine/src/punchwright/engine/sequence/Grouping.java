// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.holding.FormSpace;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;

/** Puts the hits of one holding into runs, and the runs into groups of one tool and one kind of work. */
final class Grouping {

    private record Key(WorkKind kind, int level, int tool) {
    }

    private final FormSpace space;
    private final OuterOperations outer;

    private Grouping(FormSpace space, OuterOperations outer) {
        this.space = space;
        this.outer = outer;
    }

    /** @param hits  of one holding */
    static List<ToolGroup> of(List<SheetHit> hits, OuterOperations outer, double thicknessMm) {
        FormSpace space = new FormSpace(hits, thicknessMm);
        Grouping grouping = new Grouping(space, outer);
        List<HitRun> runs = runs(hits);
        FormLevels levels = new FormLevels(runs.stream().filter(r -> r.first().role() == HitRole.FORM).toList(), space);
        Map<Key, List<HitRun>> groups = new LinkedHashMap<>();
        for (HitRun run : runs) {
            WorkKind kind = grouping.kind(run);
            int level = kind == WorkKind.FORM ? levels.of(run) : 0;
            groups.computeIfAbsent(new Key(kind, level, run.first().use().number()), k -> new ArrayList<>()).add(run);
        }
        return groups.entrySet().stream().map(e -> new ToolGroup(e.getKey().kind, e.getKey().level,
                e.getValue().getFirst().first().use(), e.getValue())).toList();
    }

    /**
     * Neighbouring nibbling or slitting hits of one operation on one placement stay together, and the hits of one form; all others
     * stand alone.
     */
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
        return a.role() == b.role() && a.role() != HitRole.PIERCE
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
        return !space.around(hit).isEmpty();
    }
}
