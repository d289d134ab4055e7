// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.shop.ShopFactory;
import punchwright.model.work.Assembly;
import punchwright.model.work.Item;
import punchwright.model.work.Order;
import punchwright.model.work.Part;

/**
 * A folder with everything the engineer keeps: the one way to load and save the model.
 *
 * <p>The library, items and orders are read when the workspace is opened; plans, which can be long, when they are asked for. A
 * file that cannot be read does not keep the others from being read: see {@link #problems()}. Only an unreadable library
 * does.</p>
 *
 * <p>Not safe for several threads at once; whoever works in the background opens its own for reading or works on engine
 * records.</p>
 */
public final class Workspace implements AutoCloseable {

    /** What the workspace is opened for. */
    public enum Access {
        /** Reading: needs no right to write and works beside another program. */
        READ,
        /** Reading and writing: one program at a time. */
        WRITE
    }

    private final WorkspacePaths paths;
    private final WorkspaceResources resources;
    private final WorkspaceLock lock;
    private final List<WorkspaceException> problems = new ArrayList<>();

    private Workspace(WorkspacePaths paths, AtomicFiles files, WorkspaceLock lock) {
        this.paths = paths;
        this.resources = new WorkspaceResources(paths, files);
        this.lock = lock;
    }

    /** Opens an existing workspace for writing. */
    public static Workspace open(Path folder) throws WorkspaceException {
        return open(folder, Access.WRITE);
    }

    /**
     * Opens an existing workspace.
     *
     * @throws WorkspaceException when the folder or its library is missing or cannot be read, or, for writing, when another
     * program has it open or the folder is read-only
     */
    public static Workspace open(Path folder, Access access) throws WorkspaceException {
        return open(folder, access, new Storage());
    }

    static Workspace open(Path folder, Access access, Storage storage) throws WorkspaceException {
        Path root = folder.toAbsolutePath().normalize();
        if (!Files.isDirectory(root)) {
            throw new WorkspaceException(FileProblem.MISSING, root, null);
        }
        WorkspacePaths paths = new WorkspacePaths(root);
        if (!Files.exists(paths.library())) {
            throw new WorkspaceException(FileProblem.MISSING, paths.library(), null);
        }
        WorkspaceLock lock = access == Access.WRITE ? WorkspaceLock.take(root) : null;
        Workspace workspace = new Workspace(paths, new AtomicFiles(storage), lock);
        try {
            workspace.load();
        } catch (WorkspaceException | RuntimeException e) {
            workspace.close();
            throw e;
        }
        return workspace;
    }

    /** Makes a new workspace with an empty library and opens it for writing; an existing library is left alone and opened. */
    public static Workspace create(Path folder, String name, String currency) throws WorkspaceException {
        Path root = folder.toAbsolutePath().normalize();
        WorkspacePaths paths = new WorkspacePaths(root);
        try {
            Files.createDirectories(root);
        } catch (IOException e) {
            throw AtomicFiles.failure(root, e);
        }
        if (Files.exists(paths.library())) {
            return open(root);
        }
        Workspace workspace = new Workspace(paths, new AtomicFiles(new Storage()), WorkspaceLock.take(root));
        try {
            Library library = ShopFactory.eINSTANCE.createLibrary();
            library.setId("library");
            library.setName(name);
            library.setCurrency(currency);
            library.setRates(ShopFactory.eINSTANCE.createRates());
            workspace.resources.create(paths.library()).getContents().add(library);
            workspace.save(library);
        } catch (WorkspaceException | RuntimeException e) {
            workspace.close();
            throw e;
        }
        return workspace;
    }

    private void load() throws WorkspaceException {
        if (lock != null) {
            sweep();
        }
        resources.load(paths.library(), Library.class, problems);
        loadAll(WorkspacePaths.PARTS, WorkspacePaths.PART_ENDING, Item.class);
        loadAll(WorkspacePaths.ORDERS, WorkspacePaths.ORDER_ENDING, Order.class);
    }

    private void loadAll(String folder, String ending, Class<? extends EObject> kind) throws WorkspaceException {
        for (Path file : paths.list(folder, ending)) {
            try {
                resources.load(file, kind, problems);
            } catch (WorkspaceException e) {
                problems.add(e);
            }
        }
    }

    /** Deletes what a killed save left behind; only whole files ever carry a proper name. */
    private void sweep() {
        try (Stream<Path> files = Files.walk(paths.root(), 2)) {
            for (Path file : files.filter(f -> f.getFileName().toString().endsWith(AtomicFiles.TEMPORARY)).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | RuntimeException e) {
            // Left-overs do no harm; the next opening tries again.
        }
    }

    /** Where things stand, and the guard for paths. */
    public WorkspacePaths paths() {
        return paths;
    }

    /** Whether it was opened for reading only. */
    public boolean isReadOnly() {
        return lock == null;
    }

    /** What could not be read, what leads nowhere and what was migrated since the workspace was opened. */
    public List<WorkspaceException> problems() {
        return List.copyOf(problems);
    }

    /** The resource set that holds every loaded object; for editing domains. */
    public ResourceSet resourceSet() {
        return resources.set();
    }

    /** The library. */
    public Library library() {
        return resources.roots(Library.class).get(0);
    }

    /** Parts, bought items and assemblies, by file name. */
    public List<Item> items() {
        return resources.roots(Item.class);
    }

    /** The parts, by file name. */
    public List<Part> parts() {
        return resources.roots(Part.class);
    }

    /** The assemblies, by file name. */
    public List<Assembly> assemblies() {
        return resources.roots(Assembly.class);
    }

    /** The orders, by file name. */
    public List<Order> orders() {
        return resources.roots(Order.class);
    }

    /** All plans, by file name; reads those not read yet. */
    public List<Plan> plans() throws WorkspaceException {
        for (Path file : paths.list(WorkspacePaths.PLANS, WorkspacePaths.PLAN_ENDING)) {
            if (!resources.isLoaded(file)) {
                try {
                    resources.load(file, Plan.class, problems);
                } catch (WorkspaceException e) {
                    problems.removeIf(p -> p.file().equals(e.file()));
                    problems.add(e);
                }
            }
        }
        return resources.roots(Plan.class);
    }

    /** The item with an identifier. */
    public Optional<Item> item(String id) {
        return items().stream().filter(i -> id.equals(i.getId())).findFirst();
    }

    /** The order with an identifier. */
    public Optional<Order> order(String id) {
        return orders().stream().filter(o -> id.equals(o.getId())).findFirst();
    }

    /** The plan with an identifier; reads that file only. */
    public Optional<Plan> plan(String id) throws WorkspaceException {
        Path file = paths.fileFor(WorkspacePaths.PLANS, id, WorkspacePaths.PLAN_ENDING);
        if (!resources.isLoaded(file) && !Files.exists(file)) {
            return Optional.empty();
        }
        return Optional.of((Plan) resources.load(file, Plan.class, problems));
    }

    /**
     * Reads the file of a plan without making it part of the workspace. May be called on any thread, since it touches nothing
     * that is loaded.
     */
    public PlanFile readPlan(String id) throws WorkspaceException {
        Path file = paths.fileFor(WorkspacePaths.PLANS, id, WorkspacePaths.PLAN_ENDING);
        WorkspaceResource resource = resources.apart(file);
        try (InputStream in = Files.newInputStream(file)) {
            resource.load(in, Map.of());
        } catch (WorkspaceException e) {
            throw e;
        } catch (NoSuchFileException e) {
            throw new WorkspaceException(FileProblem.MISSING, file, e);
        } catch (IOException | RuntimeException e) {
            throw new WorkspaceException(FileProblem.READ_FAILED, file, e, FileFormat.oneLine(e));
        }
        if (resource.getContents().size() != 1 || !(resource.getContents().get(0) instanceof Plan)) {
            throw new WorkspaceException(FileProblem.WRONG_ROOT, file, null, Plan.class.getSimpleName(), "another object");
        }
        return new PlanFile(resource);
    }

    /**
     * Writes a plan that was made from a second reading of this folder, and reads it again. May be called on any thread; a plan
     * that stands there is replaced, its file stays under the name with .bak added.
     */
    public PlanFile storePlan(Plan plan) throws WorkspaceException {
        requireWriting();
        WorkspaceResource resource =
                resources.apart(paths.fileFor(WorkspacePaths.PLANS, plan.getId(), WorkspacePaths.PLAN_ENDING));
        resource.getContents().add(plan);
        resource.replaceOnSave();
        resource.saveIfChanged();
        return readPlan(plan.getId());
    }

    /** Makes a plan that was read or stored apart part of the workspace, in the place of the one that was loaded before. */
    public Plan take(PlanFile file) {
        resources.take(file.resource());
        return file.plan();
    }

    /**
     * Gives a new item, order or plan its file; it is written by the next save. One that is there under the same identifier is
     * replaced.
     */
    public void put(EObject root) throws WorkspaceException {
        requireWriting();
        Path file = fileFor(root);
        Resource resource = resources.find(file);
        if (resource == null && Files.exists(file)) {
            resource = resources.load(file, EObject.class, problems).eResource();
        }
        if (resource == null) {
            resource = resources.create(file);
        }
        if (root.eResource() != resource) {
            resource.getContents().clear();
            resource.getContents().add(root);
        }
    }

    private Path fileFor(EObject root) throws WorkspaceException {
        return switch (root) {
            case Item item -> paths.fileFor(WorkspacePaths.PARTS, item.getId(), WorkspacePaths.PART_ENDING);
            case Order order -> paths.fileFor(WorkspacePaths.ORDERS, order.getId(), WorkspacePaths.ORDER_ENDING);
            case Plan plan -> paths.fileFor(WorkspacePaths.PLANS, plan.getId(), WorkspacePaths.PLAN_ENDING);
            default -> throw new IllegalArgumentException("No file of its own for " + root.eClass().getName());
        };
    }

    /** Takes an item, order or plan away; its file stays under the name with .bak added. */
    public void remove(EObject root) throws WorkspaceException {
        requireWriting();
        resources.remove(root);
    }

    /**
     * Saves the file that holds an object, when it differs from what is on disk.
     *
     * @return whether something was written
     */
    public boolean save(EObject object) throws WorkspaceException {
        requireWriting();
        return resources.of(object).saveIfChanged();
    }

    /** Saves every file that differs from what is on disk, the library first; returns how many were written. */
    public int saveAll() throws WorkspaceException {
        requireWriting();
        int written = 0;
        for (WorkspaceResource resource : resources.all()) {
            written += resource.saveIfChanged() ? 1 : 0;
        }
        return written;
    }

    /** The file that holds an object. */
    public Path fileOf(EObject object) {
        return resources.of(object).file();
    }

    /** The loaded files that another program changed or removed since they were read or saved. */
    public List<Path> changedOutside() throws WorkspaceException {
        List<Path> changed = new ArrayList<>();
        for (WorkspaceResource resource : resources.all()) {
            if (resource.changedOutside()) {
                changed.add(resource.file());
            }
        }
        return changed;
    }

    /** References that lead nowhere after everything was read: the object, and where it points. */
    public List<String> unresolved() {
        EcoreUtil.resolveAll(resources.set());
        return resources.unresolved();
    }

    private void requireWriting() throws WorkspaceException {
        if (lock == null) {
            throw new WorkspaceException(FileProblem.OPEN_FOR_READING, paths.root(), null);
        }
    }

    /** Gives the right to write back; what was not saved is lost. */
    @Override
    public void close() {
        if (lock != null) {
            lock.close();
        }
    }
}
