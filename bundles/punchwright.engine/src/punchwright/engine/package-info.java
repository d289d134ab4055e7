// SPDX-License-Identifier: EPL-2.0
/**
 * The engine: everything that computes. Pure Java, no model, no window, no spreadsheet; each package below is one stage with one
 * public entry point, an immutable input and an immutable result. This package itself holds only the version a plan states.
 */
package punchwright.engine;
