// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.explorer;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.Viewer;
import org.eclipse.jface.viewers.ViewerFilter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

import punchwright.ui.drawing.FileDrop;
import punchwright.ui.editor.Editors;
import punchwright.ui.editor.FileEditor;
import punchwright.ui.form.LaterRefresh;
import punchwright.ui.job.Importing;
import punchwright.ui.job.Messages;
import punchwright.ui.job.Plans;
import punchwright.ui.library.LibraryEditor;
import punchwright.ui.library.ShopKind;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/** The workspace folder by places: shop, parts, orders, plans, drawings, sheets. A double click or Enter opens. */
public final class ExplorerView extends ViewPart {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.explorer";

    private TreeViewer viewer;
    private Text filter;
    private LaterRefresh later;
    private MadeActions made;
    private final Runnable follower = () -> later.queue();

    @Override
    public void createPartControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).margins(2, 2).applyTo(body);
        filter = new Text(body, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage(Texts.of("filter.hint"));
        Accessibles.name(filter, Texts.of("filter.name"));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(filter);
        viewer = new TreeViewer(body, SWT.SINGLE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(viewer.getControl());
        Accessibles.name(viewer.getControl(), Texts.of("place.explorer"));
        viewer.setContentProvider(new Provider());
        viewer.setLabelProvider(new Labels());
        viewer.addFilter(new Words());
        filter.addModifyListener(e -> {
            viewer.refresh();
            if (!filter.getText().isBlank()) {
                viewer.expandAll();
            }
        });
        viewer.addDoubleClickListener(e -> open((Node) viewer.getStructuredSelection().getFirstElement()));
        MenuManager menu = new MenuManager();
        viewer.getControl().setMenu(menu.createContextMenu(viewer.getControl()));
        getSite().registerContextMenu(menu, viewer);
        getSite().setSelectionProvider(viewer);
        FileDrop.on(viewer.getControl(), this::dropped);
        made = new MadeActions(getViewSite().getActionBars());
        later = new LaterRefresh(viewer.getControl(), this::refresh);
        Session.addListener(follower);
        refresh();
    }

    private void dropped(List<Path> files) {
        if (Session.current().isPresent()) {
            Importing.ask(getSite().getWorkbenchWindow(), files);
        } else {
            Messages.say(getSite().getShell(), "command.needsWorkspace");
        }
    }

    private void refresh() {
        made.refresh();
        Object[] open = viewer.getExpandedElements();
        boolean first = viewer.getInput() == null;
        List<Node> places = Session.current().map(s -> new Contents(s).places()).orElse(List.of());
        setContentDescription(Session.current().map(s -> s.workspace().library().getName()).orElse(Texts.of("explorer.none")));
        viewer.setInput(places);
        if (first && !places.isEmpty()) {
            viewer.setExpandedElements(places.stream().filter(p -> !p.key().equals("drawings")).toArray());
        } else {
            viewer.setExpandedElements(open);
        }
        if (places.isEmpty()) {
            viewer.setInput(null);
        }
    }

    private void open(Node node) {
        if (node == null) {
            return;
        }
        switch (node.target()) {
            case null -> viewer.setExpandedState(node, !viewer.getExpandedState(node));
            case ShopKind kind -> library().ifPresent(editor -> editor.show(kind));
            case String rates -> library().ifPresent(LibraryEditor::showRates);
            case EObject object -> Editors.open(object);
            case Path file -> openFile(file);
            default -> throw new IllegalStateException("No way to open " + node.target());
        }
    }

    private static Optional<LibraryEditor> library() {
        Optional<FileEditor> editor = Editors.open(Session.current().orElseThrow().workspace().library());
        return editor.map(LibraryEditor.class::cast);
    }

    private void openFile(Path file) {
        String name = file.getFileName().toString();
        if (name.endsWith(".pwplan")) {
            Plans.open(name.substring(0, name.length() - 7));
        } else if (name.toLowerCase(java.util.Locale.ROOT).endsWith(".dxf")) {
            Importing.ask(getSite().getWorkbenchWindow(), List.of(file));
        } else if (!Program.launch(file.toString())) {
            Messages.say(getSite().getShell(), "explorer.noProgram", file);
        }
    }

    /** The object that a line of the tree stands for; null when it stands for none. */
    public static EObject objectOf(Object line) {
        return line instanceof Node node ? node.object() : null;
    }

    /** Undo and redo of whole files. */
    public MadeActions made() {
        return made;
    }

    /** The tree, for tests. */
    public TreeViewer viewer() {
        return viewer;
    }

    @Override
    public void setFocus() {
        viewer.getControl().setFocus();
    }

    @Override
    public void dispose() {
        Session.removeListener(follower);
        super.dispose();
    }

    /** Nodes of the tree. */
    private static final class Provider implements ITreeContentProvider {
        @Override
        public Object[] getElements(Object input) {
            return ((List<?>) input).toArray();
        }

        @Override
        public Object[] getChildren(Object node) {
            return ((Node) node).children().toArray();
        }

        @Override
        public Object getParent(Object node) {
            return ((Node) node).parent();
        }

        @Override
        public boolean hasChildren(Object node) {
            return !((Node) node).children().isEmpty();
        }
    }

    /** Labels and signs. */
    private static final class Labels extends LabelProvider {
        @Override
        public String getText(Object node) {
            return ((Node) node).label();
        }

        @Override
        public Image getImage(Object node) {
            return ((Node) node).icon().image();
        }
    }

    /** Lines that hold the words, and the headings above them. */
    private final class Words extends ViewerFilter {
        @Override
        public boolean select(Viewer v, Object parent, Object element) {
            String words = filter.getText().strip().toLowerCase(java.util.Locale.getDefault());
            return words.isEmpty() || matches((Node) element, words);
        }

        private boolean matches(Node node, String words) {
            return node.label().toLowerCase(java.util.Locale.getDefault()).contains(words)
                    || node.children().stream().anyMatch(child -> matches(child, words));
        }
    }
}
