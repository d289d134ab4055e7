// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.library;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import punchwright.model.shop.Library;
import punchwright.model.shop.ShopPackage;
import punchwright.ui.form.ChildList;
import punchwright.ui.form.Fields;
import punchwright.ui.form.ObjectForm;
import punchwright.ui.session.OpenFile;

/** What the shop keeps once: its name and currency, the rates, and the history of the library. */
final class ShopPage extends Composite {

    ShopPage(Composite parent, OpenFile file) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        Library library = (Library) file.root();
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        EClass type = ShopPackage.Literals.LIBRARY;
        String currency = library.getCurrency();
        ObjectForm shop = new ObjectForm(sash, List.of(Fields.group("group.general", type, "name", "currency", "notes"),
                Fields.group("group.rates", type, "rates.*")), currency);
        SashForm right = new SashForm(sash, SWT.VERTICAL);
        ObjectForm history = new ObjectForm(right, List.of(), currency);
        EReference revisions = ShopPackage.Literals.LIBRARY__REVISIONS;
        new ChildList(history, revisions, currency,
                Fields.columns(revisions.getEReferenceType(), currency, "number 60", "date 90", "who 110", "why 260"));
        shop.setInput(file, library);
        history.setInput(file, library);
        if (library.getRates() != null) {
            ObjectForm secondary = new ObjectForm(right, List.of(), currency);
            EReference list = ShopPackage.Literals.RATES__SECONDARY;
            new ChildList(secondary, list, currency, Fields.columns(list.getEReferenceType(), currency, "name 130",
                    "kind 100", "perHour:2 90", "setUpMinutes:0 80", "minutesPerPiece:1 100", "minutesPerUnit:1 100"));
            secondary.setInput(file, library.getRates());
        }
    }
}
