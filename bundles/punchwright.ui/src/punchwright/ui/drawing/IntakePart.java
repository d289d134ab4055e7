// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.OptionalDouble;
import java.util.OptionalInt;

import punchwright.model.shop.Material;
import punchwright.planner.intake.FoundPart;

/** A part that may be made of a drawing, and what the person says of it. */
public final class IntakePart {

    private final IntakeDrawing drawing;
    private final FoundPart found;
    private boolean taken = true;
    private String number;
    private String name;
    private Material material;
    private double thicknessMm;
    private int quantity;

    IntakePart(IntakeDrawing drawing, FoundPart found, boolean alone) {
        this.drawing = drawing;
        this.found = found;
        String stem = drawing.file().getFileName().toString().replaceFirst("\\.[^.]*$", "");
        number = alone ? stem : stem + "-" + found.number();
        name = number;
        quantity = found.count();
    }

    /** Takes over what the person said of the part before the drawing was read in another way. */
    void like(IntakePart before) {
        taken = before.taken;
        number = before.number;
        name = before.name;
        material = before.material;
        thicknessMm = before.thicknessMm;
        quantity = before.quantity == before.found.count() ? found.count() : before.quantity;
    }

    /** Its drawing. */
    public IntakeDrawing drawing() {
        return drawing;
    }

    /** What the drawing shows of it. */
    public FoundPart found() {
        return found;
    }

    /** Whether it becomes a part of the workspace. */
    public boolean isTaken() {
        return taken;
    }

    /** Sets whether it becomes a part. */
    public void setTaken(boolean take) {
        taken = take;
    }

    /** Number of the part to be. */
    public String number() {
        return number;
    }

    /** Sets the number. */
    public void setNumber(String text) {
        number = text.strip();
    }

    /** Name of the part to be. */
    public String name() {
        return name;
    }

    /** Sets the name. */
    public void setName(String text) {
        name = text.strip();
    }

    /** Its material; null when not chosen. */
    public Material material() {
        return material;
    }

    /** Sets the material. */
    public void setMaterial(Material chosen) {
        material = chosen;
    }

    /** Its thickness in mm; 0 when not given. */
    public double thicknessMm() {
        return thicknessMm;
    }

    /** Sets the thickness in mm. */
    public void setThicknessMm(double mm) {
        thicknessMm = mm;
    }

    /** Pieces for the order. */
    public int quantity() {
        return quantity;
    }

    /** Sets the pieces for the order. */
    public void setQuantity(int pieces) {
        quantity = pieces;
    }

    /** Takes over what the notes of the drawing say of material, thickness and quantity. */
    void takeOverNotes() {
        NotesSaid said = drawing.notesSaid();
        material = said.material() == null ? material : said.material();
        OptionalDouble thickness = said.thicknessMm();
        OptionalInt pieces = said.quantity();
        thicknessMm = thickness.orElse(thicknessMm);
        quantity = pieces.orElse(quantity);
    }
}
