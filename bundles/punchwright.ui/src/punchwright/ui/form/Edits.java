// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.Collection;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;

import punchwright.ui.session.OpenFile;
import punchwright.ui.text.Texts;

/** Every change that a form or table makes, as a command on the file's stack. */
public final class Edits {

    private final OpenFile file;

    /** Changes in this file. */
    public Edits(OpenFile file) {
        this.file = file;
    }

    /** Sets a value; makes the contained object first when it is missing. Says whether something changed. */
    public boolean set(EObject object, Field field, Object value) {
        EObject holder = field.holder(object);
        if (holder == null) {
            EObject made = EcoreUtil.create(field.via().getEReferenceType());
            made.eSet(field.feature(), value);
            return file.run(labelled(SetCommand.create(file.domain(), object, field.via(), made), field.feature()));
        }
        Object before = holder.eGet(field.feature());
        if (Objects.equals(before, value)) {
            return false;
        }
        return file.run(labelled(SetCommand.create(file.domain(), holder, field.feature(), value), field.feature()));
    }

    private static Command labelled(Command command, EStructuralFeature feature) {
        CompoundCommand named = new CompoundCommand(Texts.of(feature));
        named.append(command);
        return named;
    }

    /** Adds an object to a list. */
    public boolean add(EObject owner, EReference list, EObject added) {
        return file.run(AddCommand.create(file.domain(), owner, list, added));
    }

    /** Takes objects out of their list. Whoever calls has asked {@link Uses} first. */
    public boolean remove(Collection<? extends EObject> objects) {
        return file.run(RemoveCommand.create(file.domain(), List.copyOf(objects)));
    }
}
