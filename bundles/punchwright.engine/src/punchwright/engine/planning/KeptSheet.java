// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.nesting.Layout;

/**
 * A layout that a person arranged and that is used as it is.
 *
 * @param name        what the person calls it, for messages
 * @param materialId  id of the sheet's material
 * @param thicknessMm thickness
 * @param layout      sheet, placements, runs; the ids of its parts are those of the demands
 */
public record KeptSheet(String name, String materialId, double thicknessMm, Layout layout) {
}
