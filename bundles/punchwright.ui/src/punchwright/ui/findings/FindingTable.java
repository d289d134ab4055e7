// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.findings;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** Findings as a table: severity by shape and word first. */
public final class FindingTable {

    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.NOTE };

    private final DataTable<FindingRow> table;

    /** An empty table. */
    public FindingTable(Composite parent) {
        table = new DataTable<>(parent, Texts.of("place.findings"), List.of(
                new Column<>(Texts.of("col.severity"), 90, SWT.LEFT, r -> Texts.of("severity." + r.rank()), FindingRow::rank),
                Column.text("col.code", 170, FindingRow::code), Column.text("col.origin", 130, FindingRow::origin),
                Column.text("col.subject", 150, FindingRow::subject), Column.text("col.message", 430, FindingRow::message),
                Column.text("col.remedy", 360, FindingRow::remedy)));
        table.decorate((item, row) -> item.setImage(0, SIGNS[row.rank()].image()));
    }

    /** The table. */
    public DataTable<FindingRow> table() {
        return table;
    }
}
