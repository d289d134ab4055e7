// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.findings;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.plan.Finding;

/**
 * One finding as a line.
 *
 * @param rank    0 error, 1 warning, 2 note
 * @param code    stable code
 * @param origin  where it was found: the library, a part, a plan
 * @param subject object concerned, by name
 * @param message what is the case
 * @param remedy  the way out
 * @param target  object to go to; null when there is none
 * @param feature name of the field concerned; empty when there is none
 * @param x       place in mm; NaN when there is none
 * @param y       place in mm
 */
public record FindingRow(int rank, String code, String origin, String subject, String message, String remedy, EObject target,
        String feature, double x, double y) {

    /** A finding of a plan; {@code origin} names the plan. */
    public static FindingRow of(Finding finding, String origin) {
        EObject target = finding.getSubjectObject() != null ? finding.getSubjectObject() : finding.eContainer();
        return new FindingRow(2 - finding.getSeverity().getValue(), finding.getCode(), origin, finding.getSubject(),
                finding.getMessage(), finding.getRemedy(), target, "", finding.isLocated() ? finding.getXMm() : Double.NaN,
                finding.isLocated() ? finding.getYMm() : Double.NaN);
    }

    /** Whether it has a place. */
    public boolean located() {
        return !Double.isNaN(x);
    }
}
