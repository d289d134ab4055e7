// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.library;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.ui.editor.FileEditor;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/**
 * The shop's library: one tab for each kind of record, and one for rates and revisions. Tabs are filled when they are first
 * shown.
 */
public final class LibraryEditor extends FileEditor {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.library";

    private final Map<ShopKind, TabItem> tabs = new EnumMap<>(ShopKind.class);
    private TabFolder folder;
    private TabItem shopTab;

    @Override
    protected void createContent(Composite parent) {
        folder = new TabFolder(parent, SWT.TOP);
        for (ShopKind kind : ShopKind.values()) {
            TabItem tab = new TabItem(folder, SWT.NONE);
            tab.setText(kind.plural());
            tab.setImage(kind.icon().image());
            tab.setData(kind);
            tabs.put(kind, tab);
        }
        shopTab = new TabItem(folder, SWT.NONE);
        shopTab.setText(Texts.of("kind.rates"));
        shopTab.setImage(Icons.RATES.image());
        folder.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> fill(folder.getSelection()[0])));
        fill(folder.getItem(0));
    }

    private void fill(TabItem tab) {
        if (tab.getControl() == null) {
            tab.setControl(tab == shopTab ? new ShopPage(folder, file())
                    : new KindPage(folder, (ShopKind) tab.getData(), file()));
        }
    }

    /** Shows a kind. */
    public void show(ShopKind kind) {
        folder.setSelection(tabs.get(kind));
        fill(tabs.get(kind));
    }

    /** Shows rates and revisions. */
    public void showRates() {
        folder.setSelection(shopTab);
        fill(shopTab);
    }

    @Override
    public void reveal(EObject object) {
        for (ShopKind kind : ShopKind.values()) {
            for (EObject at = object; at != null; at = at.eContainer()) {
                if (at.eContainmentFeature() == kind.list()) {
                    show(kind);
                    ((KindPage) tabs.get(kind).getControl()).select(at);
                    return;
                }
            }
        }
        if (EcoreUtil.getRootContainer(object) == file().root() && object != file().root()) {
            showRates();
        }
    }

    @Override
    public void focus(String featureName) {
        if (folder.getSelection()[0].getControl() instanceof KindPage page) {
            page.focus(featureName);
        }
    }

    /** Number of records that the table of a kind shows. */
    public int shownRecords(ShopKind kind) {
        return page(kind).table().shownCount();
    }

    /** Selects several records of one kind. */
    public void select(List<? extends EObject> records) {
        reveal(records.get(0));
        for (ShopKind kind : ShopKind.values()) {
            if (records.get(0).eContainmentFeature() == kind.list()) {
                page(kind).select(records);
            }
        }
    }

    private KindPage page(ShopKind kind) {
        show(kind);
        return (KindPage) tabs.get(kind).getControl();
    }

    @Override
    public void setFocus() {
        if (folder.getSelection().length > 0 && folder.getSelection()[0].getControl() != null) {
            folder.getSelection()[0].getControl().setFocus();
        }
    }
}
