// SPDX-License-Identifier: EPL-2.0
/**
 * The order of the hits of one sheet.
 *
 * <p>Input: machine, hits, holdings. Result: {@link punchwright.engine.sequence.Sequence}: the hits holding by holding and
 * tool by tool.
 *
 * <p>Algorithm: hits of one operation along a path stay together as runs; runs of one tool and one kind of work form a group;
 * groups are ordered by precedence rules (data with reasons), then by the dearness of the change; runs in a group are a
 * travelling path under the machine's own time, improved by 2-opt and Or-opt with neighbour lists and small kicks. All of
 * it is deterministic: fixed seed, stop by work.
 *
 * <p>Measured by: published travelling salesman optima (TSPLIB) under the plain metric, the best of all orders on small
 * cases under the machine's, and rules that every result must keep.
 */
package punchwright.engine.sequence;
