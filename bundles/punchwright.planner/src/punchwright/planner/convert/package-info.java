// SPDX-License-Identifier: EPL-2.0
/**
 * Model objects into engine input.
 *
 * <p>Input: what the engineer keeps (EMF). Result: the engine's records, in N, mm and s. Nothing is computed here but
 * units and the exploding of assemblies; what cannot be read (a drawing that is no drawing, a tool without a size) is a
 * typed finding that names the object and the way out.
 *
 * <p>Measured by: each field of a record is set from its model field in a test; a drawing that fails gives one finding.
 */
package punchwright.planner.convert;
