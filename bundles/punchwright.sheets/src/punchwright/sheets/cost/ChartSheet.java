// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import java.util.Arrays;
import java.util.List;

import javax.xml.namespace.QName;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.xmlbeans.XmlCursor;

import punchwright.model.plan.Plan;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.book.Texts;

/** Native charts on the summary's cells: kinds of cost by line on the cheapest machine, cost against quantity,
        machines compared. */
final class ChartSheet {

    private static final int ROWS = 20;
    private static final int COLUMNS = 7;
    private static final int FIRST_KIND = 3;
    /** Okabe and Ito's colours, for kinds in order; grey for the ninth. */
    private static final int[] COLOURS = {0x0072B2, 0xCC79A7, 0xE69F00, 0x56B4E9, 0x009E73, 0xF0E442, 0x000000, 0xD55E00,
            0x999999};

    private final SummarySheet summary;
    private final XSSFSheet data;
    private final Texts texts;
    private final String currency;
    private final SheetPen pen;
    private final Plan cheapest;
    private int charts;

    ChartSheet(SummarySheet summary, XSSFSheet data, Texts texts, String currency, SheetPen pen, Plan cheapest) {
        this.summary = summary;
        this.data = data;
        this.texts = texts;
        this.currency = currency;
        this.pen = pen;
        this.cheapest = cheapest;
    }

    void write(PageTexts page) {
        double[] widths = new double[2 * COLUMNS + 1];
        Arrays.fill(widths, 11);
        pen.widths(widths);
        pen.wide(0, 2 * COLUMNS, texts.get("chart.title"), Look.TITLE).height(26).next();
        kinds(cheapest.getMachine().getName(), summary.pieceRows().get(cheapest));
        if (summary.lotRows().size() > 0) {
            lots(summary.lotRows());
        }
        if (summary.compareRows() != null && summary.compareRows().getNumberOfCells() > 1) {
            machines(summary.compareRows());
        }
        page.apply(pen, 0, 0);
        pen.sheet().getPrintSetup().setFitHeight((short) 1);
    }

    private void kinds(String machine, CellRangeAddress rows) {
        XSSFChart chart = chart(texts.get("chart.kinds", machine, currency));
        XDDFBarChartData bars = bars(chart);
        bars.setBarGrouping(BarGrouping.STACKED);
        overlapFully(chart);
        for (int kind = 0; kind < SummarySheet.KINDS.length; kind++) {
            XDDFChartData.Series series = bars.addSeries(XDDFDataSourcesFactory.fromStringCellRange(data, column(rows, 1)),
                    XDDFDataSourcesFactory.fromNumericCellRange(data, column(rows, FIRST_KIND + kind)));
            series.setTitle(texts.get("kind." + SummarySheet.KINDS[kind]), null);
            series.setFillProperties(fill(COLOURS[kind]));
        }
        chart.plot(bars);
    }

    /** Bars of a stack stand on each other. The attribute is written as text: POI's small schema lacks its type. */
    private static void overlapFully(XSSFChart chart) {
        try (XmlCursor cursor = chart.getCTChart().getPlotArea().getBarChartArray(0).addNewOverlap().newCursor()) {
            cursor.setAttributeText(new QName("val"), "100");
        }
    }

    private void machines(CellRangeAddress rows) {
        XSSFChart chart = chart(texts.get("chart.machines", currency));
        XDDFBarChartData bars = bars(chart);
        XDDFChartData.Series series = bars.addSeries(XDDFDataSourcesFactory.fromStringCellRange(data, column(rows, 0)),
                XDDFDataSourcesFactory.fromNumericCellRange(data, column(rows, 7)));
        series.setTitle(texts.get("compare.total"), null);
        series.setFillProperties(fill(COLOURS[0]));
        chart.plot(bars);
    }

    private XDDFBarChartData bars(XSSFChart chart) {
        XDDFCategoryAxis across = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis up = chart.createValueAxis(AxisPosition.LEFT);
        up.setCrosses(AxisCrosses.AUTO_ZERO);
        up.setMinimum(0);
        up.setNumberFormat("#,##0.00");
        up.getOrAddMajorGridProperties().setLineProperties(line(0xD0D4D6, 0.5));
        XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, across, up);
        bars.setBarDirection(BarDirection.COL);
        bars.setVaryColors(false);
        return bars;
    }

    /** Cost of a piece against lot size, one curve for each line on the first machine. */
    private void lots(List<CellRangeAddress> rowsOfLines) {
        XSSFChart chart = chart(texts.get("chart.lots", currency));
        XDDFValueAxis across = chart.createValueAxis(AxisPosition.BOTTOM);
        across.setTitle(texts.get("lots.size"));
        across.setMinimum(0);
        XDDFValueAxis up = chart.createValueAxis(AxisPosition.LEFT);
        up.setMinimum(0);
        up.setNumberFormat("#,##0.00");
        up.getOrAddMajorGridProperties().setLineProperties(line(0xD0D4D6, 0.5));
        XDDFScatterChartData curves = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, across, up);
        curves.setVaryColors(false);
        curves.setStyle(ScatterStyle.LINE_MARKER);
        int colour = 0;
        for (CellRangeAddress rows : rowsOfLines) {
            XDDFScatterChartData.Series series = (XDDFScatterChartData.Series) curves.addSeries(
                    XDDFDataSourcesFactory.fromNumericCellRange(data, column(rows, 2)),
                    XDDFDataSourcesFactory.fromNumericCellRange(data, column(rows, 5)));
            series.setTitle(data.getRow(rows.getFirstRow()).getCell(0).getStringCellValue(), null);
            series.setSmooth(false);
            series.setMarkerStyle(MarkerStyle.CIRCLE);
            series.setLineProperties(line(COLOURS[colour++ % COLOURS.length], 1.75));
        }
        chart.plot(curves);
    }

    private XSSFChart chart(String title) {
        int column = charts % 2 * (COLUMNS + 1);
        int row = 2 + charts / 2 * (ROWS + 1);
        charts++;
        XSSFChart chart = pen.sheet().createDrawingPatriarch().createChart(pen.sheet().createDrawingPatriarch().createAnchor(0,
                0, 0, 0,
                column, row, column + COLUMNS, row + ROWS));
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        chart.getFormattedTitle().getParagraph(0).addDefaultRunProperties().setFontSize(11.0);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        return chart;
    }

    private static CellRangeAddress column(CellRangeAddress rows, int column) {
        return new CellRangeAddress(rows.getFirstRow(), rows.getLastRow(), column, column);
    }

    private static XDDFSolidFillProperties fill(int rgb) {
        return new XDDFSolidFillProperties(colour(rgb));
    }

    private static XDDFLineProperties line(int rgb, double points) {
        XDDFLineProperties line = new XDDFLineProperties(new XDDFSolidFillProperties(colour(rgb)));
        line.setWidth(points);
        return line;
    }

    private static XDDFColor colour(int rgb) {
        return rgb == 0 ? XDDFColor.from(PresetColor.BLACK)
                : XDDFColor.from(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
    }
}
