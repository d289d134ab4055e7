// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.table;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;


/**
 * A native table over rows of any number: cells are asked for when they are shown. Sorts by a click on a header, filters by
 * words, copies as tab text that a spreadsheet reads, keeps the selection over a refresh.
 *
 * @param <T> the row
 */
public final class DataTable<T> {

    private static final int HEADER_ROOM_PX = 30;

    private final Table table;
    private final List<Column<T>> columns;
    private final Rows<T> rows;
    private BiConsumer<TableItem, T> decoration = (item, row) -> { };
    private Consumer<T> onSelect = row -> { };
    private Consumer<T> onOpen = row -> { };

    /** A table with an accessible name. */
    public DataTable(Composite parent, String name, List<Column<T>> columns) {
        this.columns = columns;
        this.rows = new Rows<>(columns);
        table = new Table(parent, SWT.VIRTUAL | SWT.FULL_SELECTION | SWT.MULTI | SWT.BORDER);
        table.setHeaderVisible(true);
        Accessibles.name(table, name);
        GC measure = new GC(table);
        columns.forEach(column -> addColumn(column, measure));
        measure.dispose();
        TableMemory.bind(table, name);
        table.addListener(SWT.SetData, this::fill);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> onSelect.accept(first())));
        table.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(e -> onOpen.accept(first())));
        table.addKeyListener(KeyListener.keyPressedAdapter(e -> {
            if (e.keyCode == 'c' && (e.stateMask & SWT.MOD1) != 0) {
                copy();
            }
        }));
    }

    /** A column is at least as wide as its header. */
    private void addColumn(Column<T> column, GC measure) {
        TableColumn header = new TableColumn(table, column.align());
        header.setText(column.header());
        header.setWidth(Math.max(column.width(), measure.textExtent(column.header()).x + HEADER_ROOM_PX));
        header.setMoveable(true);
        header.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            List<T> selected = selection();
            rows.orderBy(column);
            table.setSortColumn(header);
            table.setSortDirection(rows.descending() ? SWT.DOWN : SWT.UP);
            show(selected);
        }));
    }

    private void fill(Event event) {
        TableItem item = (TableItem) event.item;
        if (event.index >= rows.shown().size()) {
            return;
        }
        T row = rows.shown().get(event.index);
        for (int i = 0; i < columns.size(); i++) {
            item.setText(i, columns.get(i).text().apply(row));
        }
        decoration.accept(item, row);
    }

    /** The widget, for layout and menus. */
    public Table control() {
        return table;
    }

    /** What is done to an item beyond its texts: an image, a colour. */
    public void decorate(BiConsumer<TableItem, T> what) {
        decoration = what;
    }

    /** Called with the first selected row, or null. */
    public void onSelect(Consumer<T> what) {
        onSelect = what;
    }

    /** Called on a double click or Enter. */
    public void onOpen(Consumer<T> what) {
        onOpen = row -> {
            if (row != null) {
                what.accept(row);
            }
        };
    }

    /** Shows these rows; the selection stays where the rows stay. */
    public void setRows(List<? extends T> newRows) {
        List<T> selected = selection();
        rows.set(newRows);
        show(selected);
    }

    /** Reads every row's texts again. */
    public void refresh() {
        List<T> selected = selection();
        rows.refresh();
        show(selected);
    }

    /** Shows the rows that hold every one of these words in any column. */
    public void filter(String words) {
        List<T> selected = selection();
        rows.filter(words);
        show(selected);
    }

    /** The rows that pass the filter, in order. */
    public List<T> shown() {
        return List.copyOf(rows.shown());
    }

    /** Number of rows that pass the filter. */
    public int shownCount() {
        return rows.shown().size();
    }

    /** Number of all rows, those filtered out included. */
    public int totalCount() {
        return rows.total();
    }

    private void show(List<T> selected) {
        table.setRedraw(false);
        try {
            table.setItemCount(rows.shown().size());
            table.clearAll();
            mark(selected);
        } finally {
            table.setRedraw(true);
        }
    }

    private void mark(List<T> selected) {
        table.deselectAll();
        if (selected.isEmpty()) {
            return;
        }
        Set<T> wanted = new LinkedHashSet<>(selected);
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < rows.shown().size() && indices.size() < wanted.size(); i++) {
            if (wanted.contains(rows.shown().get(i))) {
                indices.add(i);
            }
        }
        table.select(indices.stream().mapToInt(Integer::intValue).toArray());
    }

    /** The selected rows in the order shown. */
    public List<T> selection() {
        List<T> selected = new ArrayList<>();
        for (int index : sorted(table.getSelectionIndices())) {
            if (index < rows.shown().size()) {
                selected.add(rows.shown().get(index));
            }
        }
        return selected;
    }

    private static int[] sorted(int[] indices) {
        int[] copy = indices.clone();
        java.util.Arrays.sort(copy);
        return copy;
    }

    /** The first selected row, or null. */
    public T first() {
        List<T> selected = selection();
        return selected.isEmpty() ? null : selected.get(0);
    }

    /** Selects a row, brings it into sight and tells the listener. */
    public void select(T row) {
        int index = rows.shown().indexOf(row);
        if (index >= 0) {
            table.setSelection(index);
            table.showSelection();
            onSelect.accept(row);
        }
    }

    /** Selects rows and brings the first into sight; the listener is not told. */
    public void markOnly(List<T> marked) {
        mark(marked);
        if (table.getSelectionIndex() >= 0) {
            table.showSelection();
        }
    }

    /** Puts the selected rows (all when none is selected) on the clipboard as tab text with a header line. */
    public void copy() {
        List<T> chosen = selection().isEmpty() ? rows.shown() : selection();
        Clipboard clipboard = new Clipboard(table.getDisplay());
        try {
            clipboard.setContents(new Object[] { tabText(chosen) }, new Transfer[] { TextTransfer.getInstance() });
        } finally {
            clipboard.dispose();
        }
    }

    /** Rows as tab-separated lines in the order of the columns on the screen, header first. */
    public String tabText(List<T> chosen) {
        int[] order = table.getColumnOrder();
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < order.length; i++) {
            text.append(i == 0 ? "" : "\t").append(columns.get(order[i]).header());
        }
        for (T row : chosen) {
            text.append(System.lineSeparator());
            for (int i = 0; i < order.length; i++) {
                text.append(i == 0 ? "" : "\t").append(columns.get(order[i]).text().apply(row));
            }
        }
        return text.toString();
    }
}
