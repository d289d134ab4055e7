// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A text or centre mark: type of entity, its text (empty for a point), and where it stands in drawing units. */
public record DrawnNote(Style style, String type, String text, double x, double y, double heightUnits, double angleDeg) {
}
