// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.plan.PlanPackage;
import punchwright.model.shop.Library;
import punchwright.model.shop.ShopPackage;
import punchwright.model.work.Item;
import punchwright.model.work.Order;
import punchwright.model.work.WorkPackage;

/** The loaded files of one workspace as EMF resources. */
final class WorkspaceResources {

    private final WorkspacePaths paths;
    private final AtomicFiles files;
    private final ResourceSetImpl set;

    WorkspaceResources(WorkspacePaths paths, AtomicFiles files) {
        this.paths = paths;
        this.files = files;
        set = emptySet();
    }

    private ResourceSetImpl emptySet() {
        ResourceSetImpl empty = new ResourceSetImpl();
        empty.getPackageRegistry().put(ShopPackage.eNS_URI, ShopPackage.eINSTANCE);
        empty.getPackageRegistry().put(WorkPackage.eNS_URI, WorkPackage.eINSTANCE);
        empty.getPackageRegistry().put(PlanPackage.eNS_URI, PlanPackage.eINSTANCE);
        empty.setURIConverter(new ExtensibleURIConverterImpl(List.of(new WorkspaceUriHandler(paths)), List.of()));
        Map<String, Object> factories = empty.getResourceFactoryRegistry().getExtensionToFactoryMap();
        for (String ending : List.of("pwlib", "pwpart", "pworder", "pwplan")) {
            factories.put(ending, (Resource.Factory) uri -> new WorkspaceResource(uri, Path.of(uri.toFileString()), files));
        }
        return empty;
    }

    ResourceSet set() {
        return set;
    }

    /** Reads a file, unless it is read already, and returns its root. */
    EObject load(Path file, Class<? extends EObject> kind, List<WorkspaceException> problems) throws WorkspaceException {
        Resource resource = find(file);
        boolean fresh = resource == null || resource.getContents().isEmpty();
        try {
            if (resource != null && fresh) {
                set.getResources().remove(resource);
            }
            resource = set.getResource(uriOf(file), true);
        } catch (WrappedException e) {
            discard(file);
            throw e.getCause() instanceof WorkspaceException w ? w : damaged(file, e);
        } catch (RuntimeException e) {
            discard(file);
            throw damaged(file, e);
        }
        EObject root = resource.getContents().isEmpty() ? null : resource.getContents().get(0);
        if (!kind.isInstance(root) || resource.getContents().size() > 1) {
            discard(file);
            throw new WorkspaceException(FileProblem.WRONG_ROOT, file, null, kind.getSimpleName(), nameOf(root, resource));
        }
        if (fresh) {
            problems.addAll(((WorkspaceResource) resource).problems());
        }
        return root;
    }

    private static String nameOf(EObject root, Resource resource) {
        return root == null ? "nothing" : root.eClass().getName() + (resource.getContents().size() > 1 ? " and more" : "");
    }

    private static WorkspaceException damaged(Path file, RuntimeException e) {
        Throwable cause = e.getCause() == null ? e : e.getCause();
        return new WorkspaceException(FileProblem.DAMAGED, file, e, FileFormat.oneLine(cause));
    }

    private void discard(Path file) {
        Resource resource = find(file);
        if (resource != null) {
            set.getResources().remove(resource);
        }
    }

    /** A file as a resource in a set of its own; for work beside the thread that owns the workspace's set. */
    WorkspaceResource apart(Path file) {
        return (WorkspaceResource) emptySet().createResource(uriOf(file));
    }

    /** Takes a resource in, in the place of the one that stands for the same file. */
    void take(WorkspaceResource resource) {
        Resource before = set.getResource(resource.getURI(), false);
        if (before != null) {
            set.getResources().remove(before);
        }
        set.getResources().add(resource);
    }

    Resource create(Path file) {
        return set.createResource(uriOf(file));
    }

    Resource find(Path file) {
        return set.getResource(uriOf(file), false);
    }

    boolean isLoaded(Path file) {
        Resource resource = find(file);
        return resource != null && !resource.getContents().isEmpty();
    }

    /** The roots of one kind, by file name. */
    <T extends EObject> List<T> roots(Class<T> kind) {
        List<T> roots = new ArrayList<>();
        for (WorkspaceResource resource : all()) {
            for (EObject root : resource.getContents()) {
                if (kind.isInstance(root)) {
                    roots.add(kind.cast(root));
                }
            }
        }
        return roots;
    }

    /** Every file with content: library, items, orders, plans, each by name. */
    List<WorkspaceResource> all() {
        List<WorkspaceResource> all = new ArrayList<>();
        for (Resource resource : set.getResources()) {
            if (resource instanceof WorkspaceResource w && !w.getContents().isEmpty()) {
                all.add(w);
            }
        }
        all.sort(Comparator.<WorkspaceResource>comparingInt(r -> rank(r.getContents().get(0)))
                .thenComparing(WorkspaceResource::file));
        return all;
    }

    private static int rank(EObject root) {
        return switch (root) {
            case Library l -> 0;
            case Item i -> 1;
            case Order o -> 2;
            default -> 3;
        };
    }

    WorkspaceResource of(EObject object) {
        Resource resource = object.eResource();
        if (resource instanceof WorkspaceResource w && w.getResourceSet() == set) {
            return w;
        }
        throw new IllegalArgumentException("Not an object of this workspace: " + object);
    }

    void remove(EObject root) throws WorkspaceException {
        WorkspaceResource resource = of(root);
        if (resource.changedOutside()) {
            throw new WorkspaceException(FileProblem.CHANGED_OUTSIDE, resource.file(), null);
        }
        files.remove(resource.file());
        resource.getContents().clear();
        set.getResources().remove(resource);
    }

    /** References that lead nowhere, as 'file: object -> target'. */
    List<String> unresolved() {
        List<String> found = new ArrayList<>();
        EcoreUtil.UnresolvedProxyCrossReferencer.find(set).forEach((proxy, settings) -> settings.forEach(s ->
                found.add(s.getEObject().eResource().getURI().lastSegment() + ": " + s.getEStructuralFeature().getName() + " -> "
                        + ((InternalEObject) proxy).eProxyURI().deresolve(s.getEObject().eResource().getURI()))));
        found.sort(Comparator.naturalOrder());
        return found;
    }

    private static URI uriOf(Path file) {
        return URI.createFileURI(file.toString());
    }
}
