// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

import punchwright.engine.geometry.Shape;

/**
 * A part to be laid out.
 *
 * @param id        stable id
 * @param shape     in its own coordinates, mm
 * @param quantity  pieces needed, at least 1
 * @param anglesDeg rotations that grain and visible face allow, not empty
 * @param webMm     least distance to the next part
 */
public record NestPart(String id, Shape shape, int quantity, List<Double> anglesDeg, double webMm) {
}
