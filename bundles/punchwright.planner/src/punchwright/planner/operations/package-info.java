// SPDX-License-Identifier: EPL-2.0
/**
 * The one registry of what Punchwright does: the workbench and the headless application call the same operations, so that
 * nothing works in only one of them.
 *
 * <p>Input: a {@link punchwright.planner.operations.Call} (workspace folder, words, options, progress). Result: an
 * {@link punchwright.planner.operations.Outcome} with exit code, lines to print, findings and files. Steps are always in the
 * same order: load, compute, export, save. Nothing here needs a display; spreadsheets are written through
 * {@link punchwright.planner.operations.Reports}, since this bundle does not know the writers.
 *
 * <p>Measured by: each operation's exit codes in tests; the demo plans every order on every machine that can make it.
 */
package punchwright.planner.operations;
