// SPDX-License-Identifier: EPL-2.0
/**
 * Purpose: from a DXF file, or from parameters, to the flat shapes of parts; and back to DXF and SVG.
 * Input: a file or stream with {@link punchwright.engine.drawing.DrawingOptions} (tolerance, unit, layer rules); or sizes for
 * {@link punchwright.engine.drawing.ParametricParts}. Result: {@link punchwright.engine.drawing.DrawingResult}; a file that gives
 * no part ends in a {@link punchwright.engine.drawing.DrawingException} with the finding that says why, where and what to do.
 * Way: package dxf reads curves, the layer rules give each a meaning, the unit is decided (stated, derived or guessed, with a
 * finding), package contour chains what is cut, nesting depth makes parts. Lines and arcs stay exact throughout.
 * Why a meaning for each layer and not one list of layers to read: bend lines and marks belong to the part as well.
 * Measured by: loops, circles, areas and lengths against an independent reader on real drawings; broken files; round trips.
 */
package punchwright.engine.drawing;
