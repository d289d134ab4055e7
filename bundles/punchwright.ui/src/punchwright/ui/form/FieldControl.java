// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Text;

import punchwright.model.shop.Named;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/** The widget of one field. A text is taken over on Enter and when the focus leaves; Escape brings the model's value back. */
abstract class FieldControl {

    /** What a control needs of its form. */
    interface Host {
        EObject object();

        void commit(Field field, Object value);

        /** Told while a person types: the value, or the reason why it cannot be read. */
        void typing(Field field, Object value, String unreadable);

        List<? extends EObject> candidates(EReference reference);
    }

    private final Field field;
    private final Host host;

    private FieldControl(Field field, Host host) {
        this.field = field;
        this.host = host;
    }

    static FieldControl create(Composite parent, Field field, Host host) {
        FieldControl control;
        if (field.feature() instanceof EReference) {
            control = new OfReference(parent, field, host);
        } else if (field.feature().getEType() instanceof EEnum && !field.feature().isMany()) {
            control = new OfLiteral(parent, field, host);
        } else if (field.feature().getEType() == EcorePackage.Literals.EBOOLEAN) {
            control = new OfBoolean(parent, field, host);
        } else {
            control = new OfText(parent, field, host);
        }
        Accessibles.name(control.widget(), Texts.of(field.feature()));
        control.widget().setData("field", field.feature().getName());
        return control;
    }

    abstract Control widget();

    abstract void show();

    Field field() {
        return field;
    }

    Host host() {
        return host;
    }

    Object value() {
        EObject holder = field.holder(host.object());
        return holder == null ? field.feature().getDefaultValue() : holder.eGet(field.feature());
    }

    /** Words and figures. */
    private static final class OfText extends FieldControl {
        private final Text text;
        private boolean showing;

        OfText(Composite parent, Field field, Host host) {
            super(field, host);
            boolean notes = "notes".equals(field.feature().getName());
            boolean figure = field.feature().getEType() != EcorePackage.Literals.ESTRING && !field.feature().isMany();
            text = new Text(parent, SWT.BORDER | (notes ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE) | (figure ? SWT.RIGHT
                    : SWT.LEFT));
            text.addModifyListener(e -> typed());
            text.addListener(SWT.DefaultSelection, e -> commit());
            text.addListener(SWT.FocusOut, e -> commit());
            text.addListener(SWT.KeyDown, e -> {
                if (e.keyCode == SWT.ESC) {
                    show();
                }
            });
        }

        @Override
        Control widget() {
            return text;
        }

        @Override
        void show() {
            String shown = Values.show(field().feature(), value());
            if (!shown.equals(text.getText())) {
                showing = true;
                text.setText(shown);
                showing = false;
            }
        }

        private void typed() {
            if (showing || host().object() == null) {
                return;
            }
            try {
                host().typing(field(), Values.read(field().feature(), text.getText()), null);
            } catch (IllegalArgumentException e) {
                host().typing(field(), null, e.getMessage());
            }
        }

        private void commit() {
            if (host().object() == null || text.getText().equals(Values.show(field().feature(), value()))) {
                return;
            }
            try {
                host().commit(field(), Values.read(field().feature(), text.getText()));
                show();
            } catch (IllegalArgumentException e) {
                host().typing(field(), null, e.getMessage());
            }
        }
    }

    /** One of several literals. */
    private static final class OfLiteral extends FieldControl {
        private final Combo combo;
        private final List<Enumerator> literals = new ArrayList<>();

        OfLiteral(Composite parent, Field field, Host host) {
            super(field, host);
            combo = new Combo(parent, SWT.READ_ONLY);
            for (EEnumLiteral literal : ((EEnum) field.feature().getEType()).getELiterals()) {
                literals.add(literal.getInstance());
                combo.add(Texts.of(literal.getInstance()));
            }
            combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                    e -> host.commit(field, literals.get(combo.getSelectionIndex()))));
        }

        @Override
        Control widget() {
            return combo;
        }

        @Override
        void show() {
            combo.select(literals.indexOf(value()));
        }
    }

    /** Yes or no. */
    private static final class OfBoolean extends FieldControl {
        private final Button button;

        OfBoolean(Composite parent, Field field, Host host) {
            super(field, host);
            button = new Button(parent, SWT.CHECK);
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> host.commit(field, button.getSelection())));
        }

        @Override
        Control widget() {
            return button;
        }

        @Override
        void show() {
            button.setSelection(Boolean.TRUE.equals(value()));
        }
    }

    /** Another object of the workspace. */
    private static final class OfReference extends FieldControl {
        private final Combo combo;
        private List<EObject> candidates = List.of();

        OfReference(Composite parent, Field field, Host host) {
            super(field, host);
            combo = new Combo(parent, SWT.READ_ONLY);
            combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
                EObject chosen = candidates.get(combo.getSelectionIndex());
                if (!Objects.equals(chosen, value())) {
                    host.commit(field, chosen);
                }
            }));
        }

        @Override
        Control widget() {
            return combo;
        }

        @Override
        void show() {
            List<EObject> now = new ArrayList<>();
            if (!field().feature().isRequired()) {
                now.add(null);
            }
            now.addAll(host().candidates((EReference) field().feature()));
            if (!now.equals(candidates) || combo.getItemCount() != now.size()) {
                candidates = now;
                combo.setItems(now.stream().map(OfReference::label).toArray(String[]::new));
            }
            combo.select(candidates.indexOf(value()));
        }

        private static String label(EObject object) {
            return object instanceof Named named ? named.getName() : object == null ? "" : object.toString();
        }
    }
}
