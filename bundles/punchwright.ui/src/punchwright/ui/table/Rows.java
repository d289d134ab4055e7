// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * The rows behind a table: all of them, and those shown by filter and order. Knows no widget.
 *
 * @param <T> the row
 */
final class Rows<T> {

    private final List<Column<T>> columns;
    private List<T> all = List.of();
    private List<T> shown = List.of();
    private String filter = "";
    private Column<T> orderedBy;
    private boolean descending;

    Rows(List<Column<T>> columns) {
        this.columns = columns;
    }

    void set(List<? extends T> rows) {
        all = List.copyOf(rows);
        refresh();
    }

    void filter(String words) {
        filter = words.strip().toLowerCase(Locale.getDefault());
        refresh();
    }

    /** Orders by a column; the same column again turns the order round. */
    void orderBy(Column<T> column) {
        descending = column == orderedBy && !descending;
        orderedBy = column;
        refresh();
    }

    boolean descending() {
        return descending;
    }

    List<T> shown() {
        return shown;
    }

    int total() {
        return all.size();
    }

    void refresh() {
        List<T> rows = new ArrayList<>(all.size());
        String[] words = filter.isEmpty() ? new String[0] : filter.split("\\s+");
        for (T row : all) {
            if (words.length == 0 || matches(row, words)) {
                rows.add(row);
            }
        }
        if (orderedBy != null) {
            rows.sort(comparator());
        }
        shown = rows;
    }

    private boolean matches(T row, String[] words) {
        StringBuilder line = new StringBuilder();
        for (Column<T> column : columns) {
            line.append(column.text().apply(row).toLowerCase(Locale.getDefault())).append('\t');
        }
        for (String word : words) {
            if (line.indexOf(word) < 0) {
                return false;
            }
        }
        return true;
    }

    private Comparator<T> comparator() {
        Comparator<T> byValue = (a, b) -> compare(orderedBy.order().apply(a), orderedBy.order().apply(b));
        return descending ? byValue.reversed() : byValue;
    }

    @SuppressWarnings({ "unchecked", "rawtypes" })
    private static int compare(Comparable a, Comparable b) {
        if (a == null || b == null) {
            return a == b ? 0 : a == null ? -1 : 1;
        }
        return a instanceof String s && b instanceof String t ? Natural.compare(s, t) : a.compareTo(b);
    }
}
