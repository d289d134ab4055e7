// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.SetCommand;

import punchwright.ui.session.OpenFile;

/** Every change that a form or table makes, as a command of the model's edit bundle on the file's stack. */
public final class Edits {

    private final OpenFile file;

    /** Changes in this file. */
    public Edits(OpenFile file) {
        this.file = file;
    }

    /**
     * Sets a value in one object or in several at once; makes a missing contained object first. Says whether something changed.
     */
    public boolean set(List<? extends EObject> objects, Field field, Object value) {
        List<EObject> holders = new ArrayList<>();
        for (EObject object : objects) {
            EObject holder = field.holder(object);
            if (holder == null) {
                holder = EcoreUtil.create(field.via().getEReferenceType());
                file.run(SetCommand.create(file.domain(), object, field.via(), holder));
            }
            holders.add(holder);
        }
        return file.run(punchwright.model.edit.Edits.setAll(file.domain(), holders, field.feature(), value));
    }

    /** Adds an object to a list; it gets an identifier that is free. */
    public boolean add(EObject owner, EReference list, EObject added) {
        return file.run(punchwright.model.edit.Edits.add(file.domain(), owner, list, added));
    }

    /** Puts copies behind the objects; returns whether it did. */
    public boolean duplicate(Collection<? extends EObject> objects) {
        return file.run(punchwright.model.edit.Edits.duplicate(file.domain(), objects));
    }

    /** Moves an object within its list by so many places; returns whether it did. */
    public boolean move(EObject object, int by) {
        return file.run(punchwright.model.edit.Edits.move(file.domain(), object, by));
    }

    /** Takes objects out of their list; does nothing when one is used elsewhere. */
    public boolean remove(Collection<? extends EObject> objects) {
        Command command = punchwright.model.edit.Edits.remove(file.domain(), List.copyOf(objects));
        return file.run(command);
    }
}
