// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.editor;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

import punchwright.model.shop.Library;
import punchwright.model.shop.Named;
import punchwright.ui.text.Texts;

/** A file of the workspace as the input of an editor: the object at its root. */
public record FileInput(EObject root) implements IEditorInput {

    @Override
    public boolean exists() {
        return root.eResource() != null;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Signs.of(root).descriptor();
    }

    @Override
    public String getName() {
        if (root instanceof Library) {
            return Texts.of("place.shop");
        }
        return root instanceof Named named && named.getName() != null ? named.getName() : Texts.of(root.eClass());
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return root.eResource() == null ? getName() : root.eResource().getURI().toFileString();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
