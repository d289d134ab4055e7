// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.LayerRules;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Library;
import punchwright.model.shop.Material;
import punchwright.model.work.DrawnShape;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.ShopLayerRules;

/**
 * Drawings on their way into the workspace. Holds no widget; to be used on the UI thread, only {@link IntakeReader} reads
 * beside it.
 */
public final class Intake {

    private final Library library;
    private final Map<Path, IntakeDrawing> drawings = new LinkedHashMap<>();
    private final List<LayerRule> keptRules = new ArrayList<>();
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final IntakeReader reader = new IntakeReader(this);

    /** Drawings for a shop. */
    public Intake(Library library) {
        this.library = library;
    }

    /** Finds the drawings in files and below folders and reads them, beside the window. */
    public void add(List<Path> filesAndFolders) {
        reader.find(filesAndFolders);
    }

    /** Reads one drawing in the way in which a part reads it already. */
    public IntakeDrawing add(Path file, DrawnShape choice) {
        IntakeDrawing drawing = new IntakeDrawing(file, EcoreUtil.copy(choice));
        drawings.put(file, drawing);
        reader.read(List.of(drawing));
        return drawing;
    }

    void found(List<Path> files) {
        List<IntakeDrawing> fresh = new ArrayList<>();
        for (Path file : files) {
            if (!drawings.containsKey(file)) {
                IntakeDrawing drawing = new IntakeDrawing(file);
                drawings.put(file, drawing);
                fresh.add(drawing);
            }
        }
        reader.read(fresh);
        changed();
    }

    /** Leaves drawings out. */
    public void remove(List<IntakeDrawing> out) {
        out.forEach(d -> drawings.remove(d.file()));
        changed();
    }

    /** Reads drawings again, since unit, layers or rules have changed. */
    public void readAgain(List<IntakeDrawing> again) {
        again.forEach(IntakeDrawing::await);
        reader.read(again);
        changed();
    }

    /** Reads a drawing again before all others, since a person looks at it. */
    public void readFirst(IntakeDrawing drawing) {
        drawing.await();
        reader.first(drawing);
        changed();
    }

    /** The drawings, in the order in which they came. */
    public List<IntakeDrawing> drawings() {
        return List.copyOf(drawings.values());
    }

    boolean holds(IntakeDrawing drawing) {
        return drawings.get(drawing.file()) == drawing;
    }

    /** Who reads them. */
    public IntakeReader reader() {
        return reader;
    }

    /** The parts that are taken, in order. */
    public List<IntakePart> takenParts() {
        return drawings.values().stream().flatMap(d -> d.parts().stream()).filter(IntakePart::isTaken).toList();
    }

    /** The materials to choose from. */
    public List<Material> materials() {
        return library.getMaterials();
    }

    /** The layer rules as they will be: those to be kept, then those of the shop. */
    public LayerRules layerRules() {
        return ShopLayerRules.before(keptRules, ShopLayerRules.of(library));
    }

    DrawingOptions options(IntakeDrawing drawing) {
        return DrawingStore.options(EcoreUtil.copy(drawing.choice()), layerRules());
    }

    /** Makes a drawing's own rule one of the shop, asked before its others; every drawing is read again by it. */
    public void keep(IntakeDrawing drawing, LayerRule rule) {
        drawing.choice().getLayerRules().remove(rule);
        keptRules.add(0, rule);
        readAgain(drawings());
    }

    /** Rules that become rules of the shop, in the order in which they will be asked. */
    public List<LayerRule> keptRules() {
        return List.copyOf(keptRules);
    }

    /** Reads every other drawing with the unit, the hidden layers and the rules of this one. */
    public void sameForAll(IntakeDrawing drawing) {
        for (IntakeDrawing other : drawings.values()) {
            if (other != drawing) {
                other.choice().setUnit(drawing.choice().getUnit());
                other.choice().setHiddenLayers(drawing.choice().isHiddenLayers());
                other.choice().getLayerRules().clear();
                other.choice().getLayerRules().addAll(EcoreUtil.copyAll(drawing.choice().getLayerRules()));
            }
        }
        readAgain(drawings().stream().filter(d -> d != drawing).toList());
    }

    /** Told on the UI thread when anything has changed. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    void changed() {
        listeners.forEach(Runnable::run);
    }

    /** Stops reading; what was read stays. */
    public void stop() {
        reader.stop();
    }
}
