// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EContentAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

import punchwright.ui.session.OpenFile;
import punchwright.ui.text.Texts;

/**
 * The form of one kind of object: a field for every value with its unit, in groups; below the heading the verdict of the model's
 * rules, also while a person types. The form follows every change of the object, by whomever.
 */
public final class ObjectForm extends Composite {

    private static final int WHEEL_PX = 16;

    private final List<FieldControl> controls = new ArrayList<>();
    private final VerdictLine verdicts;
    private final ScrolledComposite scroll;
    private final Composite body;
    private final FormGrid grid;
    private final String currency;
    private final List<Control> extras = new ArrayList<>();
    private final List<Runnable> onShow = new ArrayList<>();
    private OpenFile file;
    private EObject object;
    private List<EObject> together = List.of();
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

    /**
     * A form.
     *
     * @param groups     what it shows
     * @param currency   currency of money fields
     */
    public ObjectForm(Composite parent, List<FieldGroup> groups, String currency) {
        super(parent, SWT.NONE);
        this.currency = currency;
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(this);
        verdicts = new VerdictLine(this);
        GridDataFactory.fillDefaults().grab(true, false).exclude(groups.isEmpty()).applyTo(verdicts);
        verdicts.setVisible(!groups.isEmpty());
        scroll = new ScrolledComposite(this, SWT.V_SCROLL | SWT.H_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.getVerticalBar().setIncrement(24);
        GridDataFactory.fillDefaults().grab(true, true).hint(300, 200).applyTo(scroll);
        scroll.addListener(SWT.Resize, e -> fit());
        body = new Composite(scroll, SWT.NONE);
        grid = new FormGrid(body);
        groups.forEach(this::group);
        scroll.setContent(body);
        addDisposeListener(e -> unfollow());
        setInput(null, null);
    }

    private void group(FieldGroup group) {
        Label title = new Label(body, SWT.NONE);
        title.setText(group.title());
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        grid.title(title);
        Host host = new Host();
        for (Field field : group.fields()) {
            field(field, host);
        }
        grid.endOfGroup(body);
    }

    private static boolean isWide(Field field) {
        return field.feature().isMany() || switch (field.feature().getName()) {
            case "notes", "shearStrengthSource", "drawing", "contourDrawing" -> true;
            default -> false;
        };
    }

    private void field(Field field, Host host) {
        boolean wide = isWide(field);
        grid.beforeField(body, wide);
        Label label = new Label(body, SWT.NONE);
        label.setText(Texts.of(field.feature()));
        String help = Helps.of(field.feature());
        label.setToolTipText(help);
        FieldControl control = FieldControl.create(body, field, host);
        control.widget().setToolTipText(help);
        control.widget().addListener(SWT.MouseWheel, this::scroll);
        controls.add(control);
        Label unit = new Label(body, SWT.NONE);
        unit.setText(Units.of(field.feature(), currency));
        grid.field(label, control.widget(), unit, wide);
    }

    /** The wheel moves the form, also over a field: it never changes a value by accident. */
    private void scroll(Event wheel) {
        wheel.doit = false;
        Point origin = scroll.getOrigin();
        scroll.setOrigin(origin.x, origin.y - wheel.count * WHEEL_PX);
    }

    /** Puts something below the fields, over the whole width: a list of contained objects. */
    public Composite addBlock(String heading, int height) {
        Label title = new Label(body, SWT.NONE);
        title.setText(heading);
        title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        grid.title(title);
        Composite block = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(block);
        grid.block(block, height);
        extras.add(block);
        return block;
    }

    /** Called after the form shows another object or the object has changed. */
    public void onShow(Runnable what) {
        onShow.add(what);
    }

    /** The object shown, or null. */
    public EObject object() {
        return object;
    }

    /** The file of the object shown, or null. */
    public OpenFile file() {
        return file;
    }

    /** Shows an object; null empties the form. */
    public void setInput(OpenFile newFile, EObject newObject) {
        setInput(newFile, newObject, newObject == null ? List.of() : List.of(newObject));
    }

    /** Shows an object; what is changed is changed in all of {@code selected}. */
    public void setInput(OpenFile newFile, EObject newObject, List<? extends EObject> selected) {
        unfollow();
        together = List.copyOf(selected);
        file = newFile;
        object = newObject;
        if (object != null) {
            object.eAdapters().add(follower);
        }
        refresh();
    }

    private void unfollow() {
        if (object != null) {
            object.eAdapters().remove(follower);
        }
    }

    private void refresh() {
        for (FieldControl control : controls) {
            control.widget().setEnabled(object != null);
            control.show();
        }
        extras.forEach(block -> block.setEnabled(object != null));
        verdicts.show(object == null ? List.of() : Verdicts.of(object), together.size());
        onShow.forEach(Runnable::run);
        fit();
    }

    /** Two fields a line where there is room, else one. */
    private void fit() {
        grid.fit(scroll.getClientArea().width);
        scroll.setMinSize(body.computeSize(SWT.DEFAULT, SWT.DEFAULT));
        body.layout();
    }

    /** Brings the field of a feature into sight and gives it the focus; says whether there is one. */
    public boolean focus(String featureName) {
        for (FieldControl control : controls) {
            if (control.field().feature().getName().equals(featureName)) {
                scroll.showControl(control.widget());
                return control.widget().setFocus();
            }
        }
        return false;
    }

    @Override
    public boolean setFocus() {
        return !controls.isEmpty() && controls.get(0).widget().setFocus();
    }

    /** What the fields ask of the form. */
    private final class Host implements FieldControl.Host {
        @Override
        public EObject object() {
            return object;
        }

        @Override
        public void commit(Field field, Object value) {
            new Edits(file).set(together.contains(object) ? together : List.of(object), field, value);
        }

        @Override
        public void typing(Field field, Object value, String unreadable) {
            if (unreadable != null) {
                verdicts.show(List.of(new Verdict(0, "", Texts.of(field.feature()), unreadable,
                        Texts.of("field.unreadable.remedy"), null, field.feature().getName())), together.size());
            } else {
                verdicts.show(Verdicts.ofTrial(object, field, value), together.size());
            }
        }

        @Override
        public List<? extends EObject> candidates(EReference reference) {
            return Candidates.of(reference, object);
        }
    }
}
