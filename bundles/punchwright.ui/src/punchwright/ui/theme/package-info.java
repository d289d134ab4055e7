// SPDX-License-Identifier: EPL-2.0
/**
 * Colours and signs.
 *
 * <p>Purpose: no picture names a colour by value or an icon by path. Input: an ink or an icon by name. Result: the colour of the
 * present theme, the shared image. Way: inks are colour definitions of the workbench theme with a value of their own to fall back
 * on; icons are our own SVG files. Line widths and line kinds follow ISO 128, references ISO 6433, colours of tools the palette
 * of Okabe and Ito (2008). Measured by: the test that every ink has a colour definition in plugin.xml and every icon its
 * file.</p>
 */
package punchwright.ui.theme;
