// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import org.eclipse.emf.ecore.EObject;

/**
 * What is to be said about a value.
 *
 * @param rank    0 error, 1 warning, 2 note
 * @param code    stable code; empty for a value that could not be read
 * @param subject the object concerned, by name
 * @param message what is the case
 * @param remedy  the way out
 * @param target  the object concerned; null for a value that could not be read
 * @param feature name of the field concerned; empty when it concerns several
 */
public record Verdict(int rank, String code, String subject, String message, String remedy, EObject target, String feature) {
}
