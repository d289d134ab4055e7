// SPDX-License-Identifier: EPL-2.0
/**
 * Purpose: from the bytes of a DXF file to plane curves with their layer, line type and colour, and nothing more.
 * Input: a stream of bytes, text or binary form, R10 to 2018. Result: {@link punchwright.engine.drawing.dxf.RawDrawing}.
 * Way: a tag source gives group code and value one by one without holding the file; an entity is a small buffer of its
 * tags; a table from entity type to handler turns it into curves (lines, circular and elliptic arcs, B-splines) that are
 * closed under affine maps, so that blocks, mirrored, stretched and tilted planes need no special case. Blocks are
 * exploded last, after their number of curves has been computed, so that nested arrays cannot fill the memory.
 * Group codes and their value types: the published "DXF Reference" of the format, chapters "Group Codes" and "ENTITIES".
 * Measured by: the comparison with an independent reader and the broken files (tests), and by the time for 100 MB.
 */
package punchwright.engine.drawing.dxf;
