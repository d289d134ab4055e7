// SPDX-License-Identifier: EPL-2.0
/**
 * Small pictures of records.
 *
 * <p>Purpose: people rather look than read: a tool to scale with the gap between punch and die, a machine with its reach, clamps
 * and places, a holder with its inserts, a sheet with its rolling direction. Input: a record of the library. Result: lines on
 * paper (ISO 128 widths and kinds). Way: plain geometry of the record's own dimensions; a record that is not filled in yet gives
 * no picture. Measured by: the tests of tool outlines (areas and widths of known shapes).</p>
 */
package punchwright.ui.picture;
