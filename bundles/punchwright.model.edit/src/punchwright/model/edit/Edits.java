// SPDX-License-Identifier: EPL-2.0
package punchwright.model.edit;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.common.command.UnexecutableCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;

import punchwright.model.names.Names;
import punchwright.model.shop.Identified;
import punchwright.model.shop.Library;
import punchwright.model.shop.Named;
import punchwright.model.shop.Revision;
import punchwright.model.shop.ShopFactory;
import punchwright.model.shop.ShopPackage;

/**
 * Changes that an engineer makes, each as one command that can be undone and redone. A command that would change nothing, or
 * must not be made, cannot be executed.
 */
public final class Edits {

    private Edits() {
    }

    /**
     * Gives one feature of many objects the same value. Objects that have it already, or have no such feature, are left
     * alone.
     */
    public static Command setAll(EditingDomain domain, Collection<? extends EObject> objects, EStructuralFeature feature,
            Object value) {
        CompoundCommand command = new CompoundCommand(text("set", Names.of(feature, Locale.getDefault()), objects.size()));
        for (EObject object : objects) {
            boolean has = object.eClass().getEAllStructuralFeatures().contains(feature);
            if (has && !Objects.equals(object.eGet(feature), value)) {
                command.append(SetCommand.create(domain, object, feature, value == null ? SetCommand.UNSET_VALUE : value));
            }
        }
        return command.isEmpty() ? UnexecutableCommand.INSTANCE : command;
    }

    /** Adds an object to a list of its owner; an identifier that is taken in the owner's file is replaced by a free one. */
    public static Command add(EditingDomain domain, EObject owner, EReference list, EObject object) {
        FreeIds ids = new FreeIds(EcoreUtil.getRootContainer(owner));
        ids.giveTo(object);
        CompoundCommand command = new CompoundCommand(text("add", Names.of(object, Locale.getDefault())));
        command.append(AddCommand.create(domain, owner, list, object));
        return command;
    }

    /** Puts a copy of each object behind it, with new identifiers. */
    public static Command duplicate(EditingDomain domain, Collection<? extends EObject> objects) {
        CompoundCommand command = new CompoundCommand(text("duplicate", objects.size()));
        List<EObject> copies = new ArrayList<>();
        List<EObject> lastFirst = new ArrayList<>(objects);
        lastFirst.sort(Comparator.comparingInt(Edits::index).reversed());
        for (EObject object : lastFirst) {
            EReference list = object.eContainmentFeature();
            if (list != null && list.isMany()) {
                EObject copy = EcoreUtil.copy(object);
                FreeIds ids = new FreeIds(EcoreUtil.getRootContainer(object));
                copies.forEach(ids::take);
                ids.giveTo(copy);
                copies.add(copy);
                command.append(AddCommand.create(domain, object.eContainer(), list, List.of(copy), index(object) + 1));
            }
        }
        return command.isEmpty() ? UnexecutableCommand.INSTANCE : command;
    }

    /** Moves an object within its list by so many places; cannot be executed beyond the ends of the list. */
    public static Command move(EditingDomain domain, EObject object, int by) {
        EReference list = object.eContainmentFeature();
        int to = index(object) + by;
        if (by == 0 || list == null || !list.isMany() || to < 0 || to >= ((List<?>) object.eContainer().eGet(list)).size()) {
            return UnexecutableCommand.INSTANCE;
        }
        CompoundCommand command = new CompoundCommand(text("move", Names.of(object, Locale.getDefault())));
        command.append(MoveCommand.create(domain, object.eContainer(), list, object, to));
        return command;
    }

    private static int index(EObject object) {
        EReference list = object.eContainmentFeature();
        return list == null || !list.isMany() ? -1 : ((List<?>) object.eContainer().eGet(list)).indexOf(object);
    }

    /**
     * Removes objects that nothing else refers to. As long as one is used by an object that stays, the command cannot be
     * executed; {@link #whereUsed} says by whom.
     */
    public static Command remove(EditingDomain domain, Collection<? extends EObject> objects) {
        for (EObject object : objects) {
            if (object.eContainer() == null || usedByOthers(object, objects)) {
                return UnexecutableCommand.INSTANCE;
            }
        }
        CompoundCommand command = new CompoundCommand(text("remove", objects.size()));
        for (EObject object : objects) {
            command.append(RemoveCommand.create(domain, object));
        }
        return command.isEmpty() ? UnexecutableCommand.INSTANCE : command;
    }

    private static boolean usedByOthers(EObject object, Collection<? extends EObject> removed) {
        for (EObject user : whereUsed(object)) {
            if (removed.stream().noneMatch(r -> EcoreUtil.isAncestor(r, user))) {
                return true;
            }
        }
        return false;
    }

    /** The objects in the same resource set that refer to an object or to what it contains, in file order. */
    public static List<EObject> whereUsed(EObject object) {
        List<EObject> users = new ArrayList<>();
        if (object.eResource() == null || object.eResource().getResourceSet() == null) {
            return users;
        }
        Iterator<?> all = EcoreUtil.getAllProperContents(object.eResource().getResourceSet(), false);
        while (all.hasNext()) {
            if (all.next() instanceof EObject user && !EcoreUtil.isAncestor(object, user)
                    && user.eCrossReferences().stream().anyMatch(target -> EcoreUtil.isAncestor(object, target))) {
                users.add(user);
            }
        }
        return users;
    }

    /** Adds the next revision to the library: what is saved then is known under its number. */
    public static Command revise(EditingDomain domain, Library library, String date, String who, String why) {
        Revision revision = ShopFactory.eINSTANCE.createRevision();
        int last = library.getRevisions().isEmpty() ? 0 : library.getRevisions().get(library.getRevisions().size() - 1)
                .getNumber();
        revision.setNumber(last + 1);
        revision.setDate(date);
        revision.setWho(who);
        revision.setWhy(why);
        CompoundCommand command = new CompoundCommand(text("revise", last + 1));
        command.append(AddCommand.create(domain, library, ShopPackage.Literals.LIBRARY__REVISIONS, revision));
        return command;
    }

    /** A label for an object in a list: its name, else its identifier, else its kind. */
    public static String label(EObject object) {
        if (object instanceof Named named && named.getName() != null && !named.getName().isBlank()) {
            return named.getName();
        }
        return object instanceof Identified identified && identified.getId() != null ? identified.getId()
                : Names.of(object.eClass(), Locale.getDefault());
    }

    private static String text(String key, Object... arguments) {
        ResourceBundle texts = ResourceBundle.getBundle("punchwright.model.edit.edits", Locale.getDefault(),
                Edits.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        return new MessageFormat(texts.getString(key), Locale.getDefault()).format(arguments);
    }
}
