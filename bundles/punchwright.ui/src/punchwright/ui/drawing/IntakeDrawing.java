// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.LayerUse;
import punchwright.engine.finding.Finding;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Material;
import punchwright.model.shop.ShopFactory;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.WorkFactory;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.planner.intake.DrawingReading;
import punchwright.planner.intake.FoundPart;
import punchwright.ui.text.Texts;

/** One drawing on its way in: how it is read, and what came of it. The reading itself is kept while there is memory for it. */
public final class IntakeDrawing {

    /** How far it is. */
    public enum State {
        WAITING, READ, REFUSED
    }

    private final Path file;
    private final DrawnShape choice;
    private State state = State.WAITING;
    private List<IntakePart> parts = List.of();
    private Finding refusal;
    private int errors;
    private int warnings;
    private NotesSaid said = NotesSaid.NOTHING;
    private SoftReference<DrawingReading> kept = new SoftReference<>(null);

    IntakeDrawing(Path file) {
        this(file, WorkFactory.eINSTANCE.createDrawnShape());
    }

    IntakeDrawing(Path file, DrawnShape choice) {
        this.file = file;
        this.choice = choice;
    }

    /** The file. */
    public Path file() {
        return file;
    }

    /** Its name. */
    public String name() {
        return String.valueOf(file.getFileName());
    }

    /** Unit, hidden layers and rules of its own; a part gets a copy. */
    public DrawnShape choice() {
        return choice;
    }

    /** How far it is. */
    public State state() {
        return state;
    }

    /** The parts it shows; empty when it is refused or not read yet. */
    public List<IntakePart> parts() {
        return parts;
    }

    /** What the notes say. */
    NotesSaid notesSaid() {
        return said;
    }

    /** The reading, when it is still in memory; else null. */
    DrawingReading kept() {
        return kept.get();
    }

    /** Takes a reading over; what the person said of the same parts before stays. */
    void take(DrawingReading reading, List<Material> materials) {
        kept = new SoftReference<>(reading);
        refusal = reading.refusal();
        state = reading.isRefused() ? State.REFUSED : State.READ;
        errors = (int) reading.findings().stream().filter(f -> Severities.rank(f) == 0).count();
        warnings = (int) reading.findings().stream().filter(f -> Severities.rank(f) == 1).count();
        said = NotesSaid.of(reading.drawing(), materials);
        List<IntakePart> before = parts;
        List<IntakePart> now = new ArrayList<>();
        for (FoundPart found : reading.parts()) {
            IntakePart part = new IntakePart(this, found, reading.parts().size() == 1);
            if (before.size() == reading.parts().size()) {
                part.like(before.get(now.size()));
            }
            now.add(part);
        }
        parts = List.copyOf(now);
    }

    /** Forgets what was read, since it is to be read in another way. */
    void await() {
        state = State.WAITING;
        kept = new SoftReference<>(null);
    }

    /** The state in words: what it gives, or why it gives nothing. */
    public String stateText() {
        return switch (state) {
            case WAITING -> Texts.of("intake.waiting");
            case READ -> errors + warnings == 0 ? Texts.of("intake.read") : Texts.of("intake.readWith", errors, warnings);
            case REFUSED -> Texts.of("intake.refused", refusal.message(Locale.getDefault()));
        };
    }

    /** 0 refused, 1 something to look at, 2 good, 3 not read yet. */
    int rank() {
        return switch (state) {
            case REFUSED -> 0;
            case READ -> errors + warnings > 0 ? 1 : 2;
            case WAITING -> 3;
        };
    }

    /**
     * Gives the lines of a layer another meaning in this drawing: by its name, and by colour and line type as well where it
     * has several looks.
     */
    LayerRule decide(LayerUse use, LayerMeaning meaning, List<LayerUse> all) {
        LayerRule rule = ShopFactory.eINSTANCE.createLayerRule();
        rule.setId("layer-" + (choice.getLayerRules().size() + 1));
        rule.setName(use.layer());
        rule.setMeaning(ShopLayerRules.model(meaning));
        rule.getLayerPatterns().add(use.layer());
        if (all.stream().filter(u -> u.layer().equalsIgnoreCase(use.layer()) && u.hidden() == use.hidden()).count() > 1) {
            rule.setColour(use.colour());
            rule.getLineTypePatterns().add(use.lineType());
        }
        choice.getLayerRules().removeIf(r -> r.getLayerPatterns().equals(rule.getLayerPatterns())
                && r.getColour() == rule.getColour() && r.getLineTypePatterns().equals(rule.getLineTypePatterns()));
        choice.getLayerRules().add(0, rule);
        return rule;
    }
}
