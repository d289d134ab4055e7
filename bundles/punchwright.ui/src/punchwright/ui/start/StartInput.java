// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.start;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** The first page needs no file. */
public record StartInput() implements IEditorInput {

    @Override
    public boolean exists() {
        return true;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return Icons.START.descriptor();
    }

    @Override
    public String getName() {
        return Texts.of("place.start");
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return getName();
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
