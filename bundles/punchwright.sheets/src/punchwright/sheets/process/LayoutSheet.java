// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.process;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTTwoCellAnchor;

import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.TimeShare;
import punchwright.model.shop.Clamps;
import punchwright.model.work.Part;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.picture.LayoutPicture;

/** One layout: its picture, the parts on it, clamp positions holding by holding, times of one run. */
public final class LayoutSheet {

    private static final int LAST = 11;
    private static final double PICTURE_WIDTH_MM = 268;
    private static final double PICTURE_HEIGHT_MM = 145;
    private static final double ROW_POINTS = 12;
    private static final double EMU_PER_MM = 36_000;

    private final ProcessPages pages;
    private final SheetJob job;
    private final Layout layout;
    private final SheetPen pen;

    private LayoutSheet(ProcessPages pages, SheetJob job, int number, Layout layout) {
        this.pages = pages;
        this.job = job;
        this.layout = layout;
        this.pen = pages.sheet(pages.text("layout.sheet", number + "." + layout.getNumber()), 0, 0);
    }

    public static void write(ProcessPages pages, SheetJob job, int number, Layout layout) throws IOException {
        LayoutSheet sheet = new LayoutSheet(pages, job, number, layout);
        sheet.pen.widths(12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12);
        sheet.head(number);
        sheet.picture();
        sheet.parts();
        sheet.holdings();
        sheet.times();
    }

    private void head(int number) {
        pen.wide(0, LAST, pages.text("layout.title", number + "." + layout.getNumber(), pages.material(job)),
                Look.TITLE).height(24).next();
        String stock = layout.getStock() == null ? "" : ProcessPages.blankIfNull(layout.getStock().getName());
        pen.wide(0, LAST, pages.text("layout.facts", stock, pages.texts().number(layout.getLengthMm(), 1),
                pages.texts().number(layout.getWidthMm(), 1), layout.getRunCount(),
                pages.texts().number(ProcessPages.massKg(job, layout), 1), pages.texts().number(layout.getUtilisationPercent(),
                        1),
                pages.texts().number(layout.getWebMm(), 2)), Look.SUBTITLE).height(16).next();
    }

    private void picture() throws IOException {
        Clamps clamps = pages.plan().getMachine() == null ? null : pages.plan().getMachine().getClamps();
        LayoutPicture picture = new LayoutPicture(layout, clamps, pages.outlines(), ProcessPages.parts(job), PICTURE_WIDTH_MM,
                PICTURE_HEIGHT_MM);
        Workbook book = pages.book().workbook();
        int index = book.addPicture(picture.png(), Workbook.PICTURE_TYPE_PNG);
        XSSFDrawing drawing = pen.sheet().createDrawingPatriarch();
        XSSFPicture shape = drawing.createPicture(new XSSFClientAnchor(0, 0, 0, 0, 0, pen.row(), 1, pen.row() + 1), index);
        shape.getCTPicture().getNvPicPr().getCNvPr().setDescr(pages.text("layout.alt"));
        fixSize(drawing, picture);
        int rows = (int) Math.ceil(picture.heightMm() / 25.4 * 72 / ROW_POINTS);
        for (int i = 0; i < rows; i++) {
            pen.height(ROW_POINTS).next();
        }
        pen.wide(0, LAST, pages.text("layout.legend"), Look.NOTE).fit(pages.text("layout.legend"), 190).next();
        pen.pageBreak();
    }

    /** Gives the picture its own size in mm, whatever a program makes of column widths. */
    private static void fixSize(XSSFDrawing drawing, LayoutPicture picture) {
        CTTwoCellAnchor two = drawing.getCTDrawing().getTwoCellAnchorArray(0);
        CTOneCellAnchor one = drawing.getCTDrawing().addNewOneCellAnchor();
        one.setFrom(two.getFrom());
        one.addNewExt().setCx(Math.round(picture.widthMm() * EMU_PER_MM));
        one.getExt().setCy(Math.round(picture.heightMm() * EMU_PER_MM));
        one.setPic(two.getPic());
        one.getPic().getSpPr().getXfrm().getExt().setCx(one.getExt().getCx());
        one.getPic().getSpPr().getXfrm().getExt().setCy(one.getExt().getCy());
        one.addNewClientData();
        drawing.getCTDrawing().removeTwoCellAnchor(0);
    }

    private void parts() {
        pen.section(pages.text("layout.parts"), LAST);
        heads(new int[] {0, 1, 3, 8, 10}, "part.letter", "part.number", "part.name", ">part.onsheet", ">part.all");
        List<Part> parts = ProcessPages.parts(job);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            long pieces = layout.getPlacements().stream().filter(p -> p.getPart() == part).count();
            if (pieces > 0) {
                pen.text(0, LayoutPicture.letter(i), Look.TEXT_CENTER).wide(1, 2, part.getNumber(), Look.TEXT_BOLD)
                        .wide(3, 7, part.getName(), Look.TEXT).wide(8, 9, "", Look.COUNT).number(8, pieces, Look.COUNT)
                        .wide(10, 11, "", Look.COUNT).number(10, pieces * layout.getRunCount(), Look.COUNT).next();
            }
        }
        pen.skip(1);
    }

    private void holdings() {
        pen.keep(SheetPen.table(layout.getHoldings().size()));
        pen.section(pages.text("layout.holdings"), LAST);
        heads(new int[] {0, 1, 6, 8, 9, 11}, "holding.index", "holding.clamps", "holding.reach", ">holding.offset",
                "holding.edge",
                ">holding.hits");
        for (Holding h : layout.getHoldings()) {
            String clamps = h.getClampPositionsMm().stream().map(mm -> pages.texts().number(mm,
                    1)).collect(Collectors.joining("   "));
            pen.number(0, h.getIndex(), Look.TEXT_CENTER).wide(1, 5, clamps, Look.TEXT_BOLD)
                    .wide(6, 7, pages.texts().number(h.getReachMinXMm(), 1) + " ... " + pages.texts().number(h.getReachMaxXMm(),
                            1),
                            Look.TEXT)
                    .number(8, h.getSheetOffsetMm(), Look.DEC1)
                    .wide(9, 10, pages.text(h.isTurned() ? "holding.turned" : "holding.straight"), Look.TEXT)
                    .number(11, layout.getHits().stream().filter(x -> x.getHolding() == h).count(), Look.COUNT).next();
        }
        layout.getHoldings().stream().filter(h -> h.getParkXMm() != 0 || h.getParkYMm() != 0).forEach(this::park);
        pen.skip(1);
    }

    /** Where the sheet stands while it is repositioned, when that is not where the last hit leaves it. */
    private void park(Holding h) {
        String text = pages.text("holding.park", h.getIndex(), pages.texts().number(h.getParkXMm(), 1),
                pages.texts().number(h.getParkYMm(), 1));
        pen.wide(0, LAST, text, Look.NOTE).fit(text, 190).next();
    }

    private void times() {
        pen.keep(SheetPen.table(layout.getTimes().size() + 2));
        pen.section(pages.text("layout.times"), LAST);
        heads(new int[] {0, 6, 8, 10}, "time.cause", ">time.count", ">time.seconds", ">time.share");
        int first = pen.row() + 1;
        double all = layout.getTimes().stream().mapToDouble(TimeShare::getSeconds).sum();
        for (TimeShare share : layout.getTimes()) {
            pen.wide(0, 5, pages.texts().word(share.getCause()), Look.TEXT).wide(6, 7, "", Look.COUNT)
                    .numberOrBlank(6, share.getCount(), Look.COUNT).wide(8, 9, "", Look.DEC2).number(8, share.getSeconds(),
                            Look.DEC2)
                    .wide(10, 11, "", Look.PERCENT).number(10, all > 0 ? share.getSeconds() / all : 0, Look.PERCENT).next();
        }
        pen.wide(0, 5, pages.text("time.total"), Look.TEXT_BOLD).wide(6, 7, "", Look.TEXT).wide(8, 9, "", Look.DEC2);
        if (layout.getTimes().isEmpty()) {
            pen.number(8, layout.getCycleTimeS(), Look.DEC2);
        } else {
            pen.formula(8, "SUM(I" + first + ":I" + pen.row() + ")", Look.DEC2);
        }
        pen.wide(10, 11, "", Look.TEXT).next();
        if (layout.getBoundTimeS() > 0) {
            String bound = pages.text("layout.bound", pages.texts().number(layout.getBoundTimeS(), 1));
            pen.wide(0, LAST, bound, Look.NOTE).fit(bound, 190).next();
        }
    }

    /** Headings that begin at the given columns; ">" stands right. */
    private void heads(int[] from, String... keys) {
        pen.heads(from, LAST, Stream.of(keys).map(k -> k.startsWith(">") ? ">" + pages.text(k.substring(1)) : pages.text(k))
                .toArray(String[]::new));
    }
}
