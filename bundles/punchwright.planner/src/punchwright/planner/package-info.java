// SPDX-License-Identifier: EPL-2.0
/** Turns model objects into engine input, runs the engine, and writes its results back into the model. */
package punchwright.planner;
