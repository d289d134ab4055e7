// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Draws the tool numbers in a column of a table as the balloons that stand in the picture. */
public final class BalloonCells {

    private static final int WIDTH_PX = 26;
    private static final int LARGEST_PX = 22;

    private BalloonCells() {
    }

    /** In the column of this index; the cell holds one number or several with commas between. */
    public static void in(Table table, int column) {
        table.addListener(SWT.EraseItem, e -> {
            if (e.index == column) {
                e.detail &= ~SWT.FOREGROUND;
            }
        });
        table.addListener(SWT.PaintItem, e -> paint(e, column));
    }

    private static void paint(Event e, int column) {
        String text = e.index == column ? ((TableItem) e.item).getText(column) : "";
        if (text.isEmpty()) {
            return;
        }
        GC gc = e.gc;
        Rectangle cell = ((TableItem) e.item).getBounds(column);
        gc.setAntialias(SWT.ON);
        int x = cell.x + WIDTH_PX / 2 + 4;
        for (String number : text.split(", *")) {
            ScenePainter.balloon(gc, Integer.parseInt(number), x, cell.y + cell.height / 2,
                    Math.min(cell.height - 2, LARGEST_PX));
            x += WIDTH_PX;
        }
    }
}
