// SPDX-License-Identifier: EPL-2.0
/** What both workbooks share: styles, safe text, page set-up, texts, files written whole or not at all. */
package punchwright.sheets.book;
