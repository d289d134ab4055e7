// SPDX-License-Identifier: EPL-2.0
/**
 * Purpose: the plane geometry that every stage shares: points, exact lines and arcs, closed contours, part shapes, poses.
 * Input and result: immutable values in mm; angles stored in degrees, radians only where a method says so.
 * Way: arcs stay arcs; areas by Green's theorem with the exact segment of the circle; polygons only for pictures and for
 * questions of inside and outside. Search among many boxes by a packed tree.
 * Why: punched edges are lines and arcs, and sizes must come out to 0.01 mm, so nothing is flattened early.
 * Measured by: areas and lengths against closed formulas, sweeps over random poses, and real drawings (tests).
 */
package punchwright.engine.geometry;
