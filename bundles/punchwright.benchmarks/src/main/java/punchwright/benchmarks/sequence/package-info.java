// SPDX-License-Identifier: EPL-2.0
/**
 * The search for the order of hits on published routing instances (TSPLIB: Reinelt, ORSA Journal on Computing 3 (1991)
 * 376-384), under the plain metric of each file: tour and lower bound against the published optimum.
 */
package punchwright.benchmarks.sequence;
