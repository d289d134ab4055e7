// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

/** What the layer table and the rules make of the style of an entity. */
record SeenStyle(String layer, int colour, String lineType, LayerState state, LayerMeaning meaning) {
}
