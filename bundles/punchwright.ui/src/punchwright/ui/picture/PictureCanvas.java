// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import punchwright.model.shop.Machine;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.StockSheet;
import punchwright.model.shop.Tool;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** Draws the record that a form shows. A record whose values make no picture yet leaves the paper empty. */
public final class PictureCanvas extends Canvas {

    private EObject object;

    /** An empty picture. */
    public PictureCanvas(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        Accessibles.name(this, Texts.of("picture.name"));
        addPaintListener(e -> paint(e.gc));
        addListener(SWT.Resize, e -> redraw());
    }

    /** Shows an object. */
    public void show(EObject newObject) {
        object = newObject;
        redraw();
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(area);
        gc.setAntialias(SWT.ON);
        switch (object) {
            case Tool tool -> new ToolPicture(tool).draw(gc, area);
            case Machine machine -> new MachinePicture(machine).draw(gc, area);
            case MultiToolHolder holder -> HolderPicture.draw(gc, area, holder);
            case StockSheet sheet -> StockPicture.draw(gc, area, sheet);
            case null, default -> { }
        }
    }
}
