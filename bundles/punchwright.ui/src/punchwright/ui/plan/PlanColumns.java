// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.List;

import org.eclipse.swt.SWT;

import punchwright.model.plan.Operation;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Named;
import punchwright.ui.table.Column;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Columns of the tables beside the sheet, as data. */
final class PlanColumns {

    static final List<Column<ToolUse>> TOOLS = List.of(
            Column.count("col.balloon", 46, ToolUse::getBalloon),
            Column.text("col.tool", 150, u -> name(u.getTool())),
            Column.text("col.place", 100, PlanColumns::place),
            Column.number("col.angle", 60, 1, ToolUse::getAngleDeg),
            Column.count("col.hits", 64, ToolUse::getHits),
            new Column<>(Texts.of("col.clearance"), 120, SWT.RIGHT, PlanColumns::clearance, ToolUse::getClearanceMm),
            new Column<>(Texts.of("col.force"), 110, SWT.RIGHT, PlanColumns::force, ToolUse::getForceKn),
            Column.number("col.stripping", 90, 1, ToolUse::getStrippingKn),
            Column.number("col.life", 80, 1, ToolUse::getLifeSharePercent));

    static final List<Column<Operation>> OPERATIONS = List.of(
            Column.text("col.part", 90, o -> name(o.getPart())),
            Column.count("col.number", 46, Operation::getNumber),
            Column.text("col.what", 170, Operation::getDescription),
            Column.text("col.kind", 80, o -> Texts.of(o.getKind())),
            Column.count("col.balloon", 46, o -> o.getToolUse() == null ? null : o.getToolUse().getBalloon()),
            Column.text("col.tool", 130, o -> o.getToolUse() == null ? "" : name(o.getToolUse().getTool())),
            Column.count("col.hitsPerPart", 70, Operation::getHitsPerPart),
            Column.number("col.forceOnly", 80, 1, Operation::getForceKn),
            Column.text("col.why", 260, Operation::getReason));

    static final List<Column<Times.Line>> TIMES = List.of(
            Column.text("col.sheet", 70, Times.Line::sheet),
            Column.text("col.cause", 140, Times.Line::cause),
            Column.count("col.count", 60, Times.Line::count),
            Column.number("col.seconds", 90, 1, Times.Line::seconds),
            Column.number("col.share", 70, 1, Times.Line::sharePercent),
            Column.count("col.runs", 60, Times.Line::runs),
            Column.number("col.secondsAll", 100, 1, l -> l.seconds() * l.runs()));

    private PlanColumns() {
    }

    private static String name(Named named) {
        return named == null || named.getName() == null ? "" : named.getName();
    }

    private static String place(ToolUse use) {
        String place = use.getPlace() == null ? Texts.of("place.byHand") : name(use.getPlace());
        return use.getHolder() == null ? place : place + " / " + use.getInsertPosition();
    }

    private static String clearance(ToolUse use) {
        return use.getClearanceMm() <= 0 ? "" : Numbers.fixed(use.getClearanceMm(), 2) + " ("
                + Numbers.fixed(use.getClearanceWantedMm(), 2) + ")";
    }

    private static String force(ToolUse use) {
        return Numbers.fixed(use.getForceKn(), 1) + " / " + Numbers.fixed(use.getForceLimitKn(), 0);
    }
}
