// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * One field of a form, as data.
 *
 * @param via     contained object that holds the feature; null when the object itself holds it
 * @param feature what is edited
 */
public record Field(EReference via, EStructuralFeature feature) {

    /** Fields of the object itself. */
    public static List<Field> of(EStructuralFeature... features) {
        return Arrays.stream(features).map(f -> new Field(null, f)).toList();
    }

    /** Fields of a contained object. */
    public static List<Field> via(EReference via, EStructuralFeature... features) {
        return Arrays.stream(features).map(f -> new Field(via, f)).toList();
    }

    /** The object that holds the feature; null when the contained object is not there. */
    public EObject holder(EObject object) {
        return via == null || object == null ? object : (EObject) object.eGet(via);
    }
}
