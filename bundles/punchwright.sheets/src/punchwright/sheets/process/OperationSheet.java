// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.process;

import static punchwright.sheets.process.ProcessPages.blankIfNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.model.plan.Operation;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.ToolUse;
import punchwright.model.work.Part;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.picture.LayoutPicture;

/** The operations of one material and thickness; equal ones of a part stand in one row with their numbers. */
public final class OperationSheet {

    private static final int LAST = 14;

    private final ProcessPages pages;
    private final SheetPen pen;
    private final List<Part> parts;

    private OperationSheet(ProcessPages pages, SheetJob job, SheetPen pen) {
        this.pages = pages;
        this.pen = pen;
        this.parts = ProcessPages.parts(job);
    }

    public static void write(ProcessPages pages, SheetJob job, int number) {
        SheetPen pen = pages.sheet(pages.text("operations.sheet", number), 1, 1);
        pen.widths(13, 27, 27, 13, 7, 24, 9, 10, 10, 8, 8.5, 10, 9, 9.5, 40);
        pen.wide(0, LAST, pages.text("operations.title", number, pages.material(job)), Look.TITLE).height(24).next();
        OperationSheet sheet = new OperationSheet(pages, job, pen);
        sheet.heads();
        sheet.groups(job).values().forEach(sheet::row);
        pen.sheet().createFreezePane(0, 2);
    }

    private void heads() {
        pen.heads(pages.text("op.number"), pages.text("op.part"), pages.text("op.what"), pages.text("op.how"),
                pages.text("op.balloon"), pages.text("op.tool"), ">" + pages.text("op.count"), ">" + pages.text("op.x"),
                ">" + pages.text("op.y"), ">" + pages.text("op.hits"), ">" + pages.text("op.pitch"), ">"
                        + pages.text("op.scallop"),
                ">" + pages.text("op.force"), ">" + pages.text("op.time"), pages.text("op.why"));
    }

    /** Operations that differ in nothing but their place. */
    private Map<List<Object>, List<Operation>> groups(SheetJob job) {
        Map<List<Object>, List<Operation>> groups = new LinkedHashMap<>();
        for (Operation op : job.getOperations()) {
            List<Object> key = List.of(parts.indexOf(op.getPart()), blankIfNull(op.getDescription()), op.getKind(),
                    op.getToolUse() == null ? -1 : op.getToolUse().getBalloon(), op.getHitsPerPart(), op.getPitchMm(),
                    op.getScallopMm(), op.getForceKn(), blankIfNull(op.getReason()));
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(op);
        }
        return groups;
    }

    private void row(List<Operation> group) {
        Operation op = group.get(0);
        int index = parts.indexOf(op.getPart());
        String part = (index < 0 ? "" : LayoutPicture.letter(index) + "  ") + ProcessPages.named(op.getPart());
        String what = blankIfNull(op.getDescription());
        String tool = op.getToolUse() == null || op.getToolUse().getTool() == null ? pages.text("op.none")
                : blankIfNull(op.getToolUse().getTool().getName());
        String numbers = numbers(group.stream().map(Operation::getNumber).toList());
        pen.text(0, numbers, Look.TEXT_WRAP).text(1, part, Look.TEXT_WRAP).text(2, what, Look.TEXT_WRAP)
                .text(3, pages.texts().word(op.getKind()), Look.TEXT).numberOrBlank(4, balloon(op.getToolUse()), Look.TEXT_CENTER)
                .text(5, tool, Look.TEXT_WRAP);
        pen.number(6, group.size(), Look.COUNT).number(7, op.getXMm(), Look.DEC2).number(8, op.getYMm(), Look.DEC2)
                .number(9, group.stream().mapToInt(Operation::getHitsPerPart).sum(), Look.COUNT)
                .numberOrBlank(10, op.getPitchMm(), Look.DEC2).numberOrBlank(11, op.getScallopMm(), Look.DEC3)
                .number(12, op.getForceKn(), Look.DEC1)
                .numberOrBlank(13, group.stream().mapToDouble(Operation::getTimeSPerPart).sum(), Look.DEC2)
                .text(14, blankIfNull(op.getReason()), Look.TEXT_WRAP);
        pen.fit(numbers, 12.5).fit(part, 26.5).fit(what, 26.5).fit(tool, 23.5).fit(blankIfNull(op.getReason()), 39.5)
                .next();
    }

    private static int balloon(ToolUse use) {
        return use == null ? 0 : use.getBalloon();
    }

    /** "1-24, 27" for rising numbers. */
    static String numbers(List<Integer> numbers) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < numbers.size();) {
            int j = i;
            while (j + 1 < numbers.size() && numbers.get(j + 1) == numbers.get(j) + 1) {
                j++;
            }
            text.append(text.isEmpty() ? "" : ", ").append(numbers.get(i)).append(j > i ? "-" + numbers.get(j) : "");
            i = j + 1;
        }
        return text.toString();
    }
}
