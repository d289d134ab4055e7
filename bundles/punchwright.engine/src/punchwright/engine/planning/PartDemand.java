// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.drawing.FormContour;
import punchwright.engine.geometry.Shape;
import punchwright.engine.press.Material;

/**
 * A part of an order.
 *
 * @param id           stable id
 * @param name         what the shop calls it
 * @param shape        flat shape, mm
 * @param forms        forms beside the flat shape
 * @param material     sheet material
 * @param thicknessMm  sheet thickness
 * @param quantity     pieces of this lot that must be made, at least 1 unless there are optional ones
 * @param anglesDeg    rotations that grain and visible face allow
 * @param wishes       tools wanted or not wanted for it
 * @param drawnForms   forms that its drawing marks on layers for forms
 * @param optional     pieces beyond the quantity that may be made or fill up
 */
public record PartDemand(String id, String name, Shape shape, List<FormDemand> forms, Material material,
        double thicknessMm, int quantity, List<Double> anglesDeg, PartWishes wishes, List<FormContour> drawnForms,
        List<OptionalPieces> optional) {

    /** Without wishes and drawn forms. */
    public PartDemand(String id, String name, Shape shape, List<FormDemand> forms, Material material, double thicknessMm,
            int quantity, List<Double> anglesDeg) {
        this(id, name, shape, forms, material, thicknessMm, quantity, anglesDeg, PartWishes.NONE, List.of(), List.of());
    }

    /** Every piece must be made. */
    public PartDemand(String id, String name, Shape shape, List<FormDemand> forms, Material material, double thicknessMm,
            int quantity, List<Double> anglesDeg, PartWishes wishes, List<FormContour> drawnForms) {
        this(id, name, shape, forms, material, thicknessMm, quantity, anglesDeg, wishes, drawnForms, List.of());
    }

    public PartDemand {
        forms = List.copyOf(forms);
        anglesDeg = List.copyOf(anglesDeg);
        drawnForms = List.copyOf(drawnForms);
        optional = List.copyOf(optional);
    }

    /** The same part in another quantity. */
    public PartDemand pieces(int must, List<OptionalPieces> others) {
        return new PartDemand(id, name, shape, forms, material, thicknessMm, must, anglesDeg, wishes, drawnForms, others);
    }

    /** Pieces at most: those that must be made and the optional ones. */
    public int mostPieces() {
        return quantity + optional.stream().mapToInt(OptionalPieces::quantity).sum();
    }
}
