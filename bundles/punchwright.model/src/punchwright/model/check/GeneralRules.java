// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.names.Units;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Identified;
import punchwright.model.shop.Named;
import punchwright.model.shop.ShopPackage;

/** Rules for every object: identifiers, numbers, references, dates. */
final class GeneralRules {

    private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,99}");
    private static final Set<String> DATES = Set.of("date", "priceDate", "received", "dueDate");

    private GeneralRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-001", Identified.class, GeneralRules::identifier);
        rows.error("PW-M-002", EObject.class, GeneralRules::identifiersOnce);
        rows.error("PW-M-003", EObject.class, GeneralRules::finite);
        rows.error("PW-M-004", EObject.class, (o, r) -> Bounds.check(o, Bounds.Kind.ABOVE_ZERO, r));
        rows.error("PW-M-005", EObject.class, (o, r) -> Bounds.check(o, Bounds.Kind.NOT_NEGATIVE, r));
        rows.error("PW-M-006", EObject.class, (o, r) -> Bounds.check(o, Bounds.Kind.RANGE, r));
        rows.warning("PW-M-007", Named.class, GeneralRules::named);
        rows.error("PW-M-008", EObject.class, GeneralRules::required);
        rows.error("PW-M-009", EObject.class, GeneralRules::resolved);
        rows.error("PW-M-010", EObject.class, GeneralRules::dates);
    }

    private static void identifier(Identified object, Report report) {
        if (object.getId() == null || !ID.matcher(object.getId()).matches()) {
            report.add(ShopPackage.Literals.IDENTIFIED__ID, object.getId() == null ? "" : object.getId());
        }
    }

    private static void identifiersOnce(EObject root, Report report) {
        if (root.eContainer() != null) {
            return;
        }
        Map<String, EObject> seen = new HashMap<>();
        for (Iterator<EObject> all = EcoreUtil.getAllContents(List.of(root)); all.hasNext();) {
            EObject object = all.next();
            String id = EcoreUtil.getID(object);
            EObject first = id == null ? null : seen.putIfAbsent(id, object);
            if (first != null) {
                report.on(object, ShopPackage.Literals.IDENTIFIED__ID, id, first);
            }
        }
    }

    private static void finite(EObject object, Report report) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (attribute.getEAttributeType() == EcorePackage.Literals.EDOUBLE) {
                List<?> values = attribute.isMany() ? (List<?>) object.eGet(attribute) : List.of(object.eGet(attribute));
                for (Object value : values) {
                    if (!Double.isFinite((Double) value)) {
                        report.add(attribute, attribute, value.toString());
                    }
                }
            }
        }
    }

    private static void named(Named object, Report report) {
        boolean rootWithNumber = object instanceof Plan;
        if (!rootWithNumber && (object.getName() == null || object.getName().isBlank())) {
            report.add(ShopPackage.Literals.NAMED__NAME);
        }
    }

    private static void required(EObject object, Report report) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (reference.isRequired() && object.eGet(reference, false) == null) {
                report.add(reference, reference);
            }
        }
    }

    private static void resolved(EObject object, Report report) {
        for (EReference reference : object.eClass().getEAllReferences()) {
            if (reference.isContainment() || !object.eIsSet(reference)) {
                continue;
            }
            List<?> targets = reference.isMany() ? (List<?>) object.eGet(reference) : List.of(object.eGet(reference));
            for (Object target : targets) {
                if (((EObject) target).eIsProxy()) {
                    report.add(reference, reference, ((InternalEObject) target).eProxyURI().fragment());
                }
            }
        }
    }

    private static void dates(EObject object, Report report) {
        for (EAttribute attribute : object.eClass().getEAllAttributes()) {
            if (DATES.contains(attribute.getName()) && object.eGet(attribute) instanceof String text && !text.isEmpty()
                    && parse(text) == null) {
                report.add(attribute, attribute, text);
            }
        }
    }

    /** The date, or null when the text is none. */
    static LocalDate parse(String text) {
        try {
            return text == null || text.isEmpty() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            return null;
        }
    }

    /** The unit of a feature as it stands behind a value. */
    static String unit(EStructuralFeature feature) {
        return Units.of(feature.getName());
    }
}
