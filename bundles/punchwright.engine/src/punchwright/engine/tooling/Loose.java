// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/**
 * What a candidate leaves loose in an opening.
 *
 * @param slugByHandMm larger side of a slug that stays on joints and is taken out by hand; 0 where none does
 * @param slivers      loose pieces narrower than the sheet is thick
 */
record Loose(double slugByHandMm, int slivers) {

    static final Loose NONE = new Loose(0, 0);
}
