// SPDX-License-Identifier: EPL-2.0
/**
 * How long one sheet takes, event by event.
 *
 * <p>Input: machine, holdings, ordered hits. Result: {@link punchwright.engine.motion.Timeline}: every second has a cause,
 * the sums by cause equal the total, and a lower bound tells how far the order is from the least possible time.
 *
 * <p>Algorithm: one pass over the hits; the time from hit to hit is {@link punchwright.engine.sequence.RunMetric}, the
 * same that orders them, so that planner and clock cannot disagree. The bound is built from one-trees under that metric.
 *
 * <p>Measured by: closed forms of kinematics to 1e-9 s, sums against the total, and the bound against the best of all
 * orders on small cases.
 */
package punchwright.engine.motion;
