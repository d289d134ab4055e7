// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.model.work.Part;
import punchwright.model.work.ToolWish;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.findings.FindingRow;
import punchwright.ui.findings.FindingTable;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;

/** What belongs to the selected operation and to the part: ways, tools passed over, wishes and findings, one tab each. */
final class OperationDetails {

    private final DataTable<Way> ways;
    private final DataTable<PassedOver> passed;
    private final DataTable<ToolWish> kept;
    private final FindingTable findings;
    private final TabItem passedTab;
    private final TabItem keptTab;
    private final TabItem findingsTab;

    OperationDetails(Composite parent, String currency) {
        TabFolder folder = new TabFolder(parent, SWT.TOP);
        ways = new DataTable<>(folder, Texts.of("operations.ways"), OperationColumns.ways(currency));
        passed = new DataTable<>(folder, Texts.of("operations.passed"), OperationColumns.PASSED);
        kept = new DataTable<>(folder, Texts.of("operations.wishes"), OperationColumns.WISHES);
        findings = new FindingTable(folder);
        OperationsPage.tab(folder, "operations.ways", ways.control());
        passedTab = OperationsPage.tab(folder, "operations.passed", passed.control());
        keptTab = OperationsPage.tab(folder, "operations.wishes", kept.control());
        findingsTab = OperationsPage.tab(folder, "place.findings", findings.table().control());
    }

    /** Ways and tools passed over of a line, none for null; what no tool makes comes with the reasons in front. */
    void show(FeatureLine line, PartWeighing weighing) {
        ways.setRows(line == null ? List.of() : Way.of(line, weighing));
        List<PassedOver> over = line == null ? List.of() : PassedOver.of(line, weighing);
        passed.setRows(over);
        passedTab.setText(Texts.of("operations.passed.count", over.size()));
        if (line != null && line.chosen() == null) {
            passedTab.getParent().setSelection(passedTab);
        }
    }

    void showWishes(List<ToolWish> wishes) {
        kept.setRows(wishes);
        keptTab.setText(Texts.of("operations.wishes.count", wishes.size()));
    }

    void showFindings(PartWeighing weighing, Part part) {
        List<FindingRow> rows = new ArrayList<>();
        Locale locale = Locale.getDefault();
        weighing.loading().findings().forEach(f -> rows.add(OperationColumns.row(f, part, locale)));
        weighing.findings().forEach(f -> rows.add(OperationColumns.row(f, part, locale)));
        findings.table().setRows(rows);
        findingsTab.setText(Texts.of("operations.findings.count", rows.size()));
    }

    DataTable<Way> ways() {
        return ways;
    }

    DataTable<PassedOver> passed() {
        return passed;
    }

    DataTable<ToolWish> kept() {
        return kept;
    }
}
