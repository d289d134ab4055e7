// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import java.nio.file.Path;

import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;

/**
 * A part to be made of a drawing.
 *
 * @param part     with identifier, number, name, material and thickness; its shape says how the drawing is read
 * @param drawing  the file, anywhere
 * @param quantity pieces for an order, 1 or more
 */
public record NewPart(Part part, Path drawing, int quantity) {

    DrawnShape shape() {
        return (DrawnShape) part.getShape();
    }
}
