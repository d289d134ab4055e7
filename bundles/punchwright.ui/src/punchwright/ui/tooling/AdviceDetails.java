// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;

import punchwright.engine.advice.Advice;
import punchwright.engine.advice.MadePossible;
import punchwright.engine.advice.OrderToday;
import punchwright.engine.advice.PartSaving;
import punchwright.engine.advice.Recommendation;
import punchwright.engine.finding.Finding;
import punchwright.ui.findings.FindingRow;
import punchwright.ui.findings.FindingTable;
import punchwright.ui.picture.PictureCanvas;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;

/**
 * What belongs to the selected recommendation (parts, what becomes possible, picture) and to the advice (orders today, findings).
 */
final class AdviceDetails {

    private final DataTable<PartSaving> parts;
    private final DataTable<MadePossible> possible;
    private final DataTable<OrderToday> today;
    private final FindingTable findings;
    private final PictureCanvas picture;

    AdviceDetails(Composite parent, String currency) {
        TabFolder folder = new TabFolder(parent, SWT.TOP);
        parts = new DataTable<>(folder, Texts.of("advice.parts"), AdviceColumns.parts(currency));
        possible = new DataTable<>(folder, Texts.of("advice.possible"), AdviceColumns.POSSIBLE);
        picture = new PictureCanvas(folder);
        today = new DataTable<>(folder, Texts.of("advice.today"), AdviceColumns.today(currency));
        findings = new FindingTable(folder);
        AdviceView.tab(folder, "advice.parts", parts.control());
        AdviceView.tab(folder, "advice.possible", possible.control());
        AdviceView.tab(folder, "advice.picture", picture);
        AdviceView.tab(folder, "advice.today", today.control());
        AdviceView.tab(folder, "place.findings", findings.table().control());
    }

    /** Orders and findings of an advice with what was noticed in its input; null shows none. */
    void show(Advice advice, List<Finding> input) {
        today.setRows(advice == null ? List.of() : advice.today());
        findings.table().setRows(advice == null ? List.of() : Stream.concat(input.stream(), advice.findings().stream())
                .map(AdviceDetails::row).toList());
    }

    /** The recommendation selected; null shows none. */
    void select(Recommendation r) {
        parts.setRows(r == null ? List.of() : r.parts());
        possible.setRows(r == null ? List.of() : r.makesPossible());
        picture.show(r == null ? null : AdviceDrafts.record(r.addition()));
    }

    private static FindingRow row(Finding f) {
        return new FindingRow(OperationColumns.rank(f), f.code(), Texts.of("view.advice"), f.subject(),
                f.message(Locale.getDefault()), f.remedy(Locale.getDefault()), null, "", Double.NaN, Double.NaN);
    }
}
