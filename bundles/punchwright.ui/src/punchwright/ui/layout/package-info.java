// SPDX-License-Identifier: EPL-2.0
/**
 * Layouts of an order on the screen.
 *
 * <p>Purpose: the engineer sees the program's layouts, drags, turns and locks pieces, lets the rest be nested around them, and
 * keeps the result with the order. Input: an order and a machine; webs, margins and stock come from a background job. Result:
 * commands on the order's file, each one step of undo. Way: the kept records are read into {@code ArrangedSheet}s ({@code
 * BenchRows}), the hand works on such a sheet ({@code PieceHand}), and what it leaves is written back by one command ({@code
 * KeptEdits}); the picture is drawn by the scene painter, the state of pieces over it ({@code PiecePainter}). What is wrong is
 * told by dashes, sign, number and word, colour last. Measured by: {@code LayoutsTest}.</p>
 */
package punchwright.ui.layout;
