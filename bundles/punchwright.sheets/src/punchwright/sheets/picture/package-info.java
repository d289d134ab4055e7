// SPDX-License-Identifier: EPL-2.0
/**
 * Pictures of layouts as a drawing office draws them: lines after ISO 128, item references after ISO 6433, lettering in
 * single strokes after the manner of ISO 3098 (so that no font need be installed and the same plan gives the same picture on
 * every machine).
 */
package punchwright.sheets.picture;
