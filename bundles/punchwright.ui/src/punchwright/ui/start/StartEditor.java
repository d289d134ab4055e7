// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.start;

import java.nio.file.Files;
import java.nio.file.Path;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.part.EditorPart;

import punchwright.ui.job.OpenWorkspace;
import punchwright.ui.session.Recent;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** The first page: open, new, recent, demo, and three short ways in. */
public final class StartEditor extends EditorPart {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.start";

    private static final int WIDTH = 560;
    private Composite page;

    @Override
    public void init(IEditorSite site, IEditorInput input) {
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleImage(Icons.START.image());
    }

    private IWorkbenchWindow window() {
        return getSite().getWorkbenchWindow();
    }

    @Override
    public void createPartControl(Composite parent) {
        ScrolledComposite scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        page = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(40, 32).spacing(0, 6).applyTo(page);
        heading("start.title", JFaceResources.HEADER_FONT);
        words("start.purpose");
        heading("start.begin", JFaceResources.BANNER_FONT);
        demo();
        link("start.open", () -> OpenWorkspace.ask(window()));
        link("start.new", () -> OpenWorkspace.askNew(window()));
        recent();
        heading("start.ways", JFaceResources.BANNER_FONT);
        words("start.way.plan");
        words("start.way.keep");
        words("start.way.cost");
        scroll.setContent(page);
        scroll.setMinSize(page.computeSize(WIDTH, SWT.DEFAULT));
    }

    private void heading(String key, String font) {
        Label label = new Label(page, SWT.NONE);
        label.setText(Texts.of(key));
        label.setFont(JFaceResources.getFontRegistry().get(font));
        GridDataFactory.fillDefaults().indent(0, 10).applyTo(label);
    }

    private void words(String key) {
        Label label = new Label(page, SWT.WRAP);
        label.setText(Texts.of(key));
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).applyTo(label);
    }

    private void link(String key, Runnable what) {
        link(Texts.of(key), "", what);
    }

    private void link(String text, String beside, Runnable what) {
        Link link = new Link(page, SWT.NONE);
        link.setText("<a>" + text.replace("&", "&&") + "</a>" + (beside.isEmpty() ? "" : "   " + beside.replace("&", "&&")));
        link.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
    }

    private void demo() {
        Demo.folder().ifPresent(folder -> link(Texts.of("start.demo"), "", () -> OpenWorkspace.open(window(), folder)));
    }

    private void recent() {
        if (Recent.folders().isEmpty()) {
            return;
        }
        heading("start.recent", JFaceResources.BANNER_FONT);
        for (Path folder : Recent.folders()) {
            if (Files.isDirectory(folder)) {
                link(String.valueOf(folder.getFileName()), String.valueOf(folder.getParent()),
                        () -> OpenWorkspace.open(window(), folder));
            }
        }
    }

    @Override
    public void setFocus() {
        page.setFocus();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        // Nothing here is edited.
    }

    @Override
    public void doSaveAs() {
        // Nothing here is edited.
    }

    @Override
    public boolean isDirty() {
        return false;
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }
}
