// SPDX-License-Identifier: EPL-2.0
package punchwright.model.edit;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.provider.ComposedAdapterFactory;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;

import punchwright.model.files.Workspace;
import punchwright.model.plan.provider.PlanItemProviderAdapterFactory;
import punchwright.model.shop.provider.ShopItemProviderAdapterFactory;
import punchwright.model.work.provider.WorkItemProviderAdapterFactory;

/**
 * The editing domain of one workspace: one command stack for everything in it, shared by all editors, so that undo goes back in
 * the order in which the engineer worked.
 */
public final class ModelEditing extends AdapterFactoryEditingDomain {

    private final Workspace workspace;

    /** Makes the editing domain of a workspace; there should be one a workspace. */
    public ModelEditing(Workspace workspace) {
        super(adapterFactory(), new BasicCommandStack(), workspace.resourceSet());
        this.workspace = workspace;
    }

    /** A new factory of item providers for the whole model; dispose of it when it is no longer needed. */
    public static ComposedAdapterFactory adapterFactory() {
        ComposedAdapterFactory factory = new ComposedAdapterFactory();
        factory.addAdapterFactory(new ShopItemProviderAdapterFactory());
        factory.addAdapterFactory(new WorkItemProviderAdapterFactory());
        factory.addAdapterFactory(new PlanItemProviderAdapterFactory());
        factory.addAdapterFactory(new ReflectiveItemProviderAdapterFactory());
        return factory;
    }

    /** The workspace that is edited. */
    public Workspace workspace() {
        return workspace;
    }

    /** Nothing can be changed in a workspace that is open for reading only. */
    @Override
    public boolean isReadOnly(Resource resource) {
        return workspace.isReadOnly();
    }

    /** Lets go of the item providers. */
    public void dispose() {
        ((ComposedAdapterFactory) adapterFactory).dispose();
    }
}
