// SPDX-License-Identifier: EPL-2.0
/**
 * Engine results back into the model: a plan as the engineer keeps it.
 *
 * <p>Input: an engine plan with the order, machine and library it was made from. Result: a {@code Plan} with its sheet
 * jobs, tool uses, operations, layouts, holdings, hits in the order of the run, times by cause, cost and findings.
 * Ids inside a plan are made of the numbers that a person reads (J1-L2-P3), so that two runs give the same file.
 *
 * <p>Measured by: every figure of the engine's result is found in the plan; same input, same bytes.
 */
package punchwright.planner.plans;
