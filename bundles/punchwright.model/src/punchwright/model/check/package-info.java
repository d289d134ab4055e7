// SPDX-License-Identifier: EPL-2.0
/**
 * The rules that model objects must keep.
 *
 * <p>Purpose: say what is wrong or doubtful in the engineer's records before the planner meets it. Input: any model object with
 * what it contains. Result: violations, each with a stable code, a severity, the object and feature concerned, and a text in
 * English or German that names the object, the value with its unit, and the way out.</p>
 *
 * <p>How and why: a rule is one row of a table (code, severity, class, check); {@link punchwright.model.check.ModelValidator}
 * runs the table as an EMF validator, so that the Diagnostician, forms and the command line all see the same rules. A rule
 * never throws: a missing value is the business of the rule for missing values. Bounds of single numbers are rows of {@code
 * Bounds}. The contributor guide's table is written from here.</p>
 *
 * <p>Measured by: for every rule a good object that it lets pass and a changed one that it reports.</p>
 */
package punchwright.model.check;
