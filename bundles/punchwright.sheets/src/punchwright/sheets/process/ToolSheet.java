// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.process;

import static punchwright.sheets.process.ProcessPages.blankIfNull;

import java.util.Comparator;
import java.util.List;

import punchwright.model.plan.SheetJob;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Tool;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;

/** Tools by place with clearance, force and hits, of one material and thickness. */
public final class ToolSheet {

    private static final int LAST = 14;

    private final ProcessPages pages;
    private final SheetJob job;
    private final SheetPen pen;

    private ToolSheet(ProcessPages pages, SheetJob job, SheetPen pen) {
        this.pages = pages;
        this.job = job;
        this.pen = pen;
    }

    public static void write(ProcessPages pages, SheetJob job, int number) {
        SheetPen pen = pages.sheet(pages.text("tools.sheet", number), 1, 1);
        pen.widths(6, 10, 18, 25, 20, 9, 11, 11, 9, 9, 8.5, 11, 9.5, 10, 10);
        ToolSheet sheet = new ToolSheet(pages, job, pen);
        sheet.tools(number);
    }

    private void tools(int number) {
        pen.wide(0, LAST, pages.text("tools.title", number, pages.material(job)), Look.TITLE).height(24).next();
        pen.heads(pages.text("tool.balloon"), pages.text("tool.place"), pages.text("tool.holder"), pages.text("tool.tool"),
                pages.text("tool.shape"), ">" + pages.text("tool.angle"), ">" + pages.text("tool.clearance.wanted"),
                ">" + pages.text("tool.clearance.chosen"), ">" + pages.text("tool.force"), ">" + pages.text("tool.limit"),
                ">" + pages.text("tool.load"), ">" + pages.text("tool.stripping"), ">" + pages.text("tool.hits"),
                ">" + pages.text("tool.life"), pages.text("tool.setup"));
        List<ToolUse> uses = job.getToolUses().stream().sorted(Comparator.comparingInt(ToolSheet::placeOrder)
                .thenComparingInt(ToolUse::getInsertPosition).thenComparingInt(ToolUse::getBalloon)).toList();
        uses.forEach(this::tool);
        pen.sheet().createFreezePane(0, 2);
    }

    private static int placeOrder(ToolUse use) {
        if (use.getPlace() == null || !(use.getPlace().eContainer() instanceof punchwright.model.shop.Machine machine)) {
            return Integer.MAX_VALUE;
        }
        return machine.getPlaces().indexOf(use.getPlace());
    }

    private void tool(ToolUse use) {
        Tool tool = use.getTool();
        String place = use.getPlace() == null ? pages.text("tool.byhand") : blankIfNull(use.getPlace().getName());
        String holder = use.getHolder() == null ? "" : blankIfNull(use.getHolder().getName()) + " · " + use.getInsertPosition();
        String name = tool == null ? "" : (blankIfNull(tool.getId()) + "  " + blankIfNull(tool.getName())).trim();
        pen.number(0, use.getBalloon(), Look.TEXT_CENTER).text(1, place, Look.TEXT_WRAP).text(2, holder, Look.TEXT_WRAP)
                .text(3, name, Look.TEXT_WRAP).text(4, tool == null ? "" : shape(tool), Look.TEXT_WRAP);
        pen.number(5, use.getAngleDeg(), Look.GENERAL).numberOrBlank(6, use.getClearanceWantedMm(), Look.DEC2)
                .numberOrBlank(7, use.getClearanceMm(), Look.DEC2).number(8, use.getForceKn(), Look.DEC1)
                .numberOrBlank(9, use.getForceLimitKn(), Look.DEC1);
        int row = pen.row() + 1;
        if (use.getForceLimitKn() > 0) {
            pen.formula(10, "I" + row + "/J" + row, Look.PERCENT);
        } else {
            pen.text(10, "", Look.TEXT);
        }
        pen.number(11, use.getStrippingKn(), Look.DEC1).number(12, use.getHits(), Look.COUNT)
                .number(13, use.getLifeSharePercent() / 100, Look.PERCENT)
                .text(14, pages.text(use.isStanding() ? "tool.standing" : "tool.toload"), Look.TEXT);
        pen.fit(place, 9).fit(holder, 13).fit(name, 22).fit(tool == null ? "" : shape(tool), 19).next();
    }

    private String shape(Tool tool) {
        String size = pages.texts().number(tool.getLengthMm(), 3)
                + (tool.getWidthMm() > 0 && tool.getWidthMm() != tool.getLengthMm() ? " × "
                        + pages.texts().number(tool.getWidthMm(), 3) : "")
                + (tool.getCornerRadiusMm() > 0 ? " R" + pages.texts().number(tool.getCornerRadiusMm(), 3) : "");
        return pages.texts().word(tool.getShape()) + " " + size;
    }
}
