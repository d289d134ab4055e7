// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Takes the violations that one rule finds on one object. */
public interface Report {

    /** A violation on the object under check; the arguments fill {1}, {2}, ... of the rule's texts. */
    void add(EStructuralFeature feature, Object... arguments);

    /** A violation on another object than the one under check. */
    void on(EObject object, EStructuralFeature feature, Object... arguments);
}
