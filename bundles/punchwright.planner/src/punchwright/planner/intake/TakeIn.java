// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;

import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Named;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.WorkFactory;

/**
 * Takes new parts with their drawings into a workspace, and where wanted an order for them: all or nothing. What was taken in
 * can be taken back and taken in again, as long as nobody uses or changes it.
 */
public final class TakeIn {

    /** Does something with the model, on the thread that the model belongs to. */
    public interface ModelThread {
        /** Runs it and hands an exception on. */
        void run(ModelWork work) throws IOException;
    }

    /** Something done with the model. */
    public interface ModelWork {
        /** Does it. */
        void run() throws IOException;
    }

    private final Workspace workspace;
    private final List<NewPart> parts;
    private final Order order;
    private final ModelThread thread;
    private final List<EObject> written = new ArrayList<>();
    private final Map<Path, Path> aside = new LinkedHashMap<>();
    private List<Path> drawings = List.of();

    /**
     * @param parts  each with an identifier that is free
     * @param order  gets a line for each part; null for none
     * @param thread where the model may be touched
     */
    public TakeIn(Workspace workspace, List<NewPart> parts, Order order, ModelThread thread) {
        this.workspace = workspace;
        this.parts = List.copyOf(parts);
        this.order = order;
        this.thread = thread;
    }

    /**
     * Copies the drawings and writes the records; to be called off the model's thread.
     *
     * @throws IOException        when a file cannot be read or written; nothing is left behind
     * @throws CancelledException when the person cancels; nothing is left behind
     */
    public void run(Progress progress) throws IOException {
        StagedDrawings staged = new StagedDrawings(workspace.paths().root().resolve(WorkspacePaths.DRAWINGS));
        try {
            Set<Path> sources = new LinkedHashSet<>();
            parts.forEach(p -> sources.add(p.drawing()));
            staged.copy(sources, progress);
            staged.move();
            drawings = staged.moved();
            for (NewPart part : parts) {
                Path place = staged.place(part.drawing());
                part.shape().setDrawing(WorkspacePaths.DRAWINGS + "/" + workspace.paths().root().resolve(WorkspacePaths.DRAWINGS)
                        .relativize(place).toString().replace('\\', '/'));
            }
            records(progress);
        } catch (IOException | RuntimeException e) {
            takeBackQuietly(staged, e);
            throw e;
        }
    }

    private void records(Progress progress) throws IOException {
        for (NewPart part : parts) {
            progress.check();
            progress.at(part.part().getName(), written.size() / (double) parts.size());
            thread.run(() -> write(part.part()));
        }
        progress.check();
        if (order != null) {
            thread.run(() -> {
                lines();
                write(order);
            });
        }
    }

    private void lines() {
        order.getLines().clear();
        for (NewPart part : parts) {
            OrderLine line = WorkFactory.eINSTANCE.createOrderLine();
            line.setId("line-" + (order.getLines().size() + 1));
            line.setItem(part.part());
            line.setQuantity(part.quantity());
            order.getLines().add(line);
        }
    }

    private void write(EObject root) throws IOException {
        workspace.put(root);
        written.add(root);
        workspace.save(root);
    }

    private void takeBackQuietly(StagedDrawings staged, Exception why) {
        try {
            thread.run(this::removeRecords);
            staged.takeBack();
        } catch (IOException | RuntimeException e) {
            why.addSuppressed(e);
        }
    }

    /**
     * The order first, since it refers to the parts. Copies under .bak, which removing leaves, go too: they were never
     * anybody's.
     */
    private void removeRecords() throws IOException {
        for (int i = written.size() - 1; i >= 0; i--) {
            Path file = workspace.fileOf(written.get(i));
            workspace.remove(written.get(i));
            Files.deleteIfExists(file.resolveSibling(file.getFileName() + ".bak"));
        }
        written.clear();
    }

    /** Takes the records and drawings back; to be called on the model's thread. */
    public void undo() throws IOException {
        removeRecords();
        Path keep = Files.createTempDirectory("punchwright-drawings");
        keep.toFile().deleteOnExit();
        for (Path drawing : drawings) {
            Path there = keep.resolve(Integer.toString(aside.size()));
            there.toFile().deleteOnExit();
            Files.copy(drawing, there);
            aside.put(drawing, there);
            Files.delete(drawing);
        }
    }

    /** Takes everything in again after {@link #undo}; to be called on the model's thread. */
    public void redo() throws IOException {
        for (Map.Entry<Path, Path> drawing : aside.entrySet()) {
            Files.move(drawing.getValue(), drawing.getKey());
        }
        aside.clear();
        for (NewPart part : parts) {
            write(part.part());
        }
        if (order != null) {
            lines();
            write(order);
        }
    }

    /** The records that were written. */
    public List<Named> written() {
        return written.stream().map(Named.class::cast).toList();
    }
}
