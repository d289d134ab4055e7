// SPDX-License-Identifier: EPL-2.0
/**
 * The picture of a sheet.
 *
 * <p>Purpose: the engineer looks at a layout as at a drawing: sheet, parts, hits, clamps, references. Input: a {@link
 * punchwright.ui.sheet.Scene} in mm. Result: pixels, and the hit or place that a person pointed at. Way: scene (data), viewport
 * (transform), painters (lines by ISO 128, balloons by ISO 6433) and canvas (mouse, keys) are apart; hits are kept by tool in
 * arrays with a grid over them, so that only those in sight are drawn, as outlines when they can be seen and as dots when they
 * cannot; the finished picture is kept and moved while the hand moves. Measured by: time to draw 50 000 hits, and the tests of
 * viewport, grid, pick and balloon order.</p>
 */
package punchwright.ui.sheet;
