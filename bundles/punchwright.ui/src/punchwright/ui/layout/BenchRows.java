// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.planning.SheetLayouts;
import punchwright.model.shop.Machine;
import punchwright.model.shop.StockSheet;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.planner.convert.StockReader;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.OrderLayouts;
import punchwright.planner.layouts.Piece;

/** Reads kept layouts into arranged sheets with their figures; what has not changed since the last reading is taken over. */
final class BenchRows {

    private static final double SAME_MM = 1e-6;

    /** Webs, margins, costs of the order on the machine; null while they are not known yet. */
    private OrderLayouts.Result context;
    private final Map<String, NestingJob> jobs = new LinkedHashMap<>();
    private List<BenchRow> rows = List.of();

    void context(OrderLayouts.Result now) {
        context = now;
        jobs.clear();
        rows = List.of();
    }

    Optional<OrderLayouts.Result> context() {
        return Optional.ofNullable(context);
    }

    /** The rows as last read. */
    List<BenchRow> rows() {
        return rows;
    }

    /** The machine's layouts of an order as they are now. */
    List<BenchRow> read(Order order, Machine machine) {
        List<BenchRow> now = new ArrayList<>();
        for (KeptLayout kept : order.getLayouts()) {
            if (kept.getMachine() == machine) {
                now.add(row(now.size() + 1, kept));
            }
        }
        rows = List.copyOf(now);
        return rows;
    }

    private BenchRow row(int number, KeptLayout kept) {
        ArrangedSheet sheet = sheet(kept).orElse(null);
        if (sheet == null) {
            return new BenchRow(number, kept, null, null, List.of());
        }
        for (BenchRow before : rows) {
            if (before.kept() == kept && before.sheet() != null && before.sheet().job() == sheet.job() && before.sheet().runs()
                    == sheet.runs() && before.sheet().sheet().equals(sheet.sheet())
                            && before.sheet().pieces().equals(sheet.pieces())) {
                return new BenchRow(number, kept, before.sheet(), before.figures(), before.problems());
            }
        }
        return new BenchRow(number, kept, sheet, sheet.figures(), sheet.problems());
    }

    private Optional<ArrangedSheet> sheet(KeptLayout kept) {
        StockSheet stock = kept.getStock();
        NestingJob job = job(kept);
        if (stock == null || stock.eIsProxy() || job == null) {
            return Optional.empty();
        }
        List<Piece> pieces = kept.getPlacements().stream().map(BenchRows::piece).toList();
        return Optional.of(new ArrangedSheet(job, StockReader.offer(stock), kept.getRuns(), pieces));
    }

    private static Piece piece(KeptPlacement p) {
        return new Piece(p.getPart() == null ? "" : String.valueOf(p.getPart().getId()), p.getXMm(), p.getYMm(), p.getAngleDeg(),
                p.isLocked());
    }

    /** What is asked for the layout's material and thickness with its web; null where the order has no such parts. */
    NestingJob job(KeptLayout kept) {
        return sheets(kept).filter(s -> s.job() != null)
                .map(s -> jobs.computeIfAbsent(s.material().id() + "|" + s.thicknessMm() + "|" + kept.getWebMm(),
                        k -> kept.getWebMm() > 0 ? withWeb(s.job(), kept.getWebMm()) : s.job()))
                .orElse(null);
    }

    /** The part of the context that a layout belongs to. */
    Optional<SheetLayouts> sheets(KeptLayout kept) {
        return context == null || kept.getMaterial() == null ? Optional.empty() : context.sheets().stream()
                .filter(s -> s.material().id().equals(kept.getMaterial().getId())
                        && Math.abs(s.thicknessMm() - kept.getThicknessMm()) < SAME_MM)
                .findFirst();
    }

    private static NestingJob withWeb(NestingJob job, double webMm) {
        return job.withParts(job.parts().stream().map(p -> new NestPart(p.id(), p.shape(), p.quantity(), p.anglesDeg(), webMm,
                p.want(), p.pieceValue())).toList());
    }
}
