// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

import punchwright.ui.form.Field;
import punchwright.ui.form.FieldGroup;
import punchwright.ui.library.ShopKind;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.table.Natural;
import punchwright.ui.text.Numbers;

/** Forms reach every value of the library; figures are read as typed; tables order, filter and copy. */
class FormsTest {

    @Test
    void everyFeatureOfARecordCanBeEdited() {
        for (ShopKind kind : ShopKind.values()) {
            assertEquals(features(kind), reached(kind), kind.toString());
        }
    }

    private static TreeSet<String> reached(ShopKind kind) {
        TreeSet<String> reached = new TreeSet<>();
        for (FieldGroup group : kind.groups()) {
            for (Field field : group.fields()) {
                reached.add(field.via() == null ? field.feature().getName() : field.via().getName());
            }
        }
        reached.addAll(kind.lists());
        return reached;
    }

    private static TreeSet<String> features(ShopKind kind) {
        TreeSet<String> all = new TreeSet<>();
        for (EStructuralFeature feature : kind.type().getEAllStructuralFeatures()) {
            all.add(feature.getName());
        }
        return all;
    }

    @Test
    void everyListIsContained() {
        for (ShopKind kind : ShopKind.values()) {
            for (String list : kind.lists()) {
                assertTrue(kind.type().getEStructuralFeature(list) instanceof EReference r && r.isContainment()
                        && r.isMany(), list);
            }
        }
    }

    @Test
    void figuresAreReadWithPointAndWithTheLanguagesSign() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertEquals(OptionalDouble.of(12.5), Numbers.parse("12,5"));
            assertEquals(OptionalDouble.of(12.5), Numbers.parse("12.5"));
            assertEquals("12,5", Numbers.plain(12.5));
            Locale.setDefault(Locale.ENGLISH);
            assertEquals(OptionalDouble.of(-0.25), Numbers.parse(" -0.25 "));
            assertEquals("1,234.50", Numbers.fixed(1234.5, 2));
            assertEquals("0.0", Numbers.fixed(-0.01, 1));
            assertEquals(OptionalDouble.empty(), Numbers.parse("12x"));
            assertEquals(OptionalDouble.empty(), Numbers.parse("1.2.3"));
            assertEquals(OptionalDouble.empty(), Numbers.parse(""));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void figuresInWordsCountAsFigures() {
        assertTrue(Natural.compare("Round 9", "Round 10") < 0);
        assertTrue(Natural.compare("round 10", "Round 9.5") > 0);
        assertEquals(0, Natural.compare("T07", "T7"));
    }

    @Test
    void tableOrdersFiltersCopiesAndKeepsTheSelection() {
        Shell shell = new Shell(Display.getCurrent());
        try {
            shell.setLayout(new FillLayout());
            DataTable<String> table = new DataTable<>(shell, "Words", List.of(new Column<>("Word", 80, 0, w -> w, w -> w),
                    new Column<>("Length", 80, 0, w -> Integer.toString(w.length()), String::length)));
            shell.open();
            table.setRows(List.of("pear 10", "fig", "pear 9"));
            table.select("fig");
            table.control().getColumn(0).notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
            assertEquals(List.of("fig", "pear 9", "pear 10"), table.shown());
            assertEquals(List.of("fig"), table.selection());
            table.control().getColumn(0).notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
            assertEquals(List.of("pear 10", "pear 9", "fig"), table.shown());
            table.filter("pea 9");
            assertEquals(List.of("pear 9"), table.shown());
            assertEquals(3, table.totalCount());
            assertEquals("Word\tLength" + System.lineSeparator() + "pear 9\t6", table.tabText(table.shown()));
        } finally {
            shell.dispose();
        }
    }

    /** A table of ten thousand rows is filled and ordered without a pause that a person feels. */
    @Test
    void tenThousandRowsAreNoBurden() {
        Shell shell = new Shell(Display.getCurrent());
        try {
            shell.setLayout(new FillLayout());
            DataTable<Integer> table = new DataTable<>(shell, "Numbers", List.of(Column.count("col.number", 80, n -> n),
                    new Column<>("Name", 120, 0, n -> "Tool " + n, n -> "Tool " + n)));
            shell.open();
            long start = System.nanoTime();
            table.setRows(java.util.stream.IntStream.range(0, 10_000).boxed().toList());
            table.control().getColumn(1).notifyListeners(org.eclipse.swt.SWT.Selection, new org.eclipse.swt.widgets.Event());
            table.filter("tool 99");
            long ms = (System.nanoTime() - start) / 1_000_000;
            System.out.println("10 000 rows set, ordered and filtered in " + ms + " ms");
            assertTrue(table.shownCount() > 0);
            assertTrue(ms < 2000, "took " + ms + " ms");
        } finally {
            shell.dispose();
        }
    }
}
