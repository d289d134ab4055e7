// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.table;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** Keeps width and order of a table's columns from one start to the next. */
final class TableMemory {

    private static final int WIDEST = 2000;

    private TableMemory() {
    }

    /** Takes the kept state over, when it fits the table, and keeps what a person changes from now on. */
    static void bind(Table table, String name) {
        IEclipsePreferences node = InstanceScope.INSTANCE.getNode("punchwright.ui/tables");
        String key = name + "/" + Arrays.stream(table.getColumns()).map(TableColumn::getText).collect(Collectors.joining("|"))
                .hashCode();
        restore(table, node.get(key, ""));
        Runnable keep = () -> node.put(key, state(table));
        for (TableColumn column : table.getColumns()) {
            column.addListener(SWT.Resize, e -> keep.run());
            column.addListener(SWT.Move, e -> keep.run());
        }
    }

    private static String state(Table table) {
        String widths = Arrays.stream(table.getColumns()).map(c -> Integer.toString(c.getWidth()))
                .collect(Collectors.joining(","));
        return widths + ";" + Arrays.stream(table.getColumnOrder()).mapToObj(Integer::toString).collect(Collectors.joining(","));
    }

    private static void restore(Table table, String kept) {
        if (!kept.matches("[0-9,]+;[0-9,]+")) {
            return;
        }
        int[] widths = figures(kept.substring(0, kept.indexOf(';')));
        int[] order = figures(kept.substring(kept.indexOf(';') + 1));
        int count = table.getColumnCount();
        int[] sorted = order.clone();
        Arrays.sort(sorted);
        if (widths.length != count || !Arrays.equals(sorted, IntStream.range(0, count).toArray())) {
            return;
        }
        for (int k = 0; k < count; k++) {
            table.getColumn(k).setWidth(Math.min(Math.max(widths[k], 10), WIDEST));
        }
        table.setColumnOrder(order);
    }

    private static int[] figures(String text) {
        return Arrays.stream(text.split(",")).filter(s -> !s.isEmpty() && s.length() < 6).mapToInt(Integer::parseInt).toArray();
    }
}
