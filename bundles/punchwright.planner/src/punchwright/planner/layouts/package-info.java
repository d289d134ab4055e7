// SPDX-License-Identifier: EPL-2.0
/**
 * Layouts of an order without a plan, and one sheet as a person arranges it.
 *
 * <p>Purpose: workbench and command line show, arrange and keep layouts. Input: an order, a machine, the library; for one
 * sheet what the layout stage is asked ({@code NestingJob}) and the pieces where they lie. Result: layouts with stock, runs,
 * pieces, use, cost, bound and remnants; changed sheets, each a new object; what the independent check says, by number of
 * piece. Way: the tools are chosen as in planning, since the webs follow from them; nothing is proven. Moves snap to boxes a
 * web apart; whether pieces overlap is said by true shapes, by the check that shares no code with the placing. Measured by:
 * {@code ArrangedSheetTest}, {@code LayoutTest} of the command line, and the workbench's {@code LayoutsTest}.</p>
 */
package punchwright.planner.layouts;
