// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.library;

import java.util.List;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

import punchwright.model.shop.Library;
import punchwright.model.shop.Named;
import punchwright.ui.form.ChildList;
import punchwright.ui.form.Edits;
import punchwright.ui.form.Fields;
import punchwright.ui.form.LaterRefresh;
import punchwright.ui.form.ObjectForm;
import punchwright.ui.form.RemoveRecords;
import punchwright.ui.picture.PictureCanvas;
import punchwright.ui.session.OpenFile;
import punchwright.ui.table.Accessibles;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/**
 * One kind of the shop's records: the table with its filter on the left, picture and form of the selected record on the right.
 */
final class KindPage extends Composite {

    private final ShopKind kind;
    private final OpenFile file;
    private final Library library;
    private final DataTable<EObject> table;
    private final ObjectForm form;
    private final PictureCanvas picture;
    private Label count;
    private Text filter;
    private final LaterRefresh later = new LaterRefresh(this, this::refresh);
    private final EContentAdapter follower = new EContentAdapter() {
        @Override
        public void notifyChanged(Notification change) {
            super.notifyChanged(change);
            if (!change.isTouch()) {
                later.queue();
            }
        }
    };

    KindPage(Composite parent, ShopKind kind, OpenFile file) {
        super(parent, SWT.NONE);
        this.kind = kind;
        this.file = file;
        this.library = (Library) file.root();
        GridLayoutFactory.fillDefaults().applyTo(this);
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(6, 4).margins(4, 4).applyTo(left);
        bar(left);
        table = new DataTable<>(left, kind.plural(), Fields.columns(kind.type(), library.getCurrency(), kind.columns()));
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).applyTo(table.control());
        Composite right = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(right);
        picture = new PictureCanvas(right);
        GridDataFactory.fillDefaults().grab(true, false).hint(300, 190).applyTo(picture);
        form = new ObjectForm(right, kind.groups(), library.getCurrency());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(form);
        kind.children().forEach(this::childList);
        sash.setWeights(52, 48);
        table.onSelect(this::show);
        table.onOpen(row -> form.setFocus());
        table.control().addListener(SWT.KeyDown, e -> {
            boolean step = kind.ordered() && (e.stateMask & SWT.MOD3) != 0;
            if (e.keyCode == SWT.DEL) {
                remove();
            } else if (step && (e.keyCode == SWT.ARROW_UP || e.keyCode == SWT.ARROW_DOWN)) {
                e.doit = false;
                move(e.keyCode == SWT.ARROW_UP ? -1 : 1);
            }
        });
        library.eAdapters().add(follower);
        addDisposeListener(e -> library.eAdapters().remove(follower));
        refresh();
        if (!records().isEmpty()) {
            table.select(records().get(0));
        }
    }

    private void childList(ShopKind.Children children) {
        EReference list = (EReference) Fields.feature(kind.type(), children.feature());
        new ChildList(form, list, library.getCurrency(),
                Fields.columns(list.getEReferenceType(), library.getCurrency(), children.columns().toArray(String[]::new)));
    }

    private void bar(Composite parent) {
        filter = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Texts.of("filter.hint"));
        Accessibles.name(filter, Texts.of("filter.name"));
        filter.addModifyListener(e -> {
            table.filter(filter.getText());
            count();
        });
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        count = new Label(parent, SWT.RIGHT);
        GridDataFactory.fillDefaults().hint(112, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(count);
        ToolBar tools = new ToolBar(parent, SWT.FLAT);
        item(tools, Icons.ADD, "record.add", this::add);
        item(tools, Icons.DUPLICATE, "record.duplicate", this::duplicate);
        item(tools, Icons.REMOVE, "record.remove", this::remove);
        if (kind.ordered()) {
            item(tools, Icons.UP, "record.up", () -> move(-1));
            item(tools, Icons.DOWN, "record.down", () -> move(1));
        }
    }

    private static void item(ToolBar bar, Icons icon, String key, Runnable what) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setImage(icon.image());
        item.setToolTipText(Texts.of(key));
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
    }

    @SuppressWarnings("unchecked")
    private List<EObject> records() {
        return (List<EObject>) library.eGet(kind.list());
    }

    private void refresh() {
        table.setRows(records());
        count();
        EObject shown = form.object();
        if (shown != null && !records().contains(shown)) {
            show(table.first());
        }
        picture.redraw();
    }

    private void count() {
        count.setText(table.shownCount() == table.totalCount() ? Texts.of("filter.all", table.totalCount())
                : Texts.of("filter.some", table.shownCount(), table.totalCount()));
    }

    private void show(EObject record) {
        form.setInput(record == null ? null : file, record, table.selection());
        picture.show(record);
    }

    /** Selects a record, also when the filter hides it. */
    void select(EObject record) {
        table.select(record);
        if (table.first() != record) {
            filter.setText("");
            table.select(record);
        }
    }

    /** Selects several records; a change in the form goes to all of them. */
    void select(List<? extends EObject> records) {
        filter.setText("");
        table.markOnly(List.copyOf(records));
        show(table.first());
    }

    /** Gives the focus to a field of the selected record. */
    void focus(String featureName) {
        form.focus(featureName);
    }

    /** The table, for tests. */
    DataTable<EObject> table() {
        return table;
    }

    private void add() {
        EObject made = EcoreUtil.create(kind.type());
        ((Named) made).setName(Texts.of("record.new", Texts.of(kind.type())));
        insert(made);
        form.focus("name");
    }

    private void duplicate() {
        List<EObject> originals = table.selection();
        if (new Edits(file).duplicate(originals)) {
            refresh();
            List<EObject> records = records();
            select(records.get(records.indexOf(originals.get(originals.size() - 1)) + 1));
        }
    }

    private void insert(EObject made) {
        new Edits(file).add(library, kind.list(), made);
        filter.setText("");
        refresh();
        select(made);
    }

    /** Moves the selected record in the list; those of an ordered kind are asked from the top. */
    private void move(int by) {
        EObject record = table.first();
        if (record != null && new Edits(file).move(record, by)) {
            refresh();
            select(record);
        }
    }

    private void remove() {
        RemoveRecords.from(getShell(), file, table.selection());
    }

    @Override
    public boolean setFocus() {
        return table.control().setFocus();
    }
}
