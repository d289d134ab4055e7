// SPDX-License-Identifier: EPL-2.0
package punchwright.model.names;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.shop.Named;
import punchwright.model.work.Item;
import punchwright.model.work.Order;

/** How classes, features, literals and objects are called. */
public final class Names {

    private Names() {
    }

    /** Name of a class, as 'Multi-tool holder'. */
    public static String of(EClass type, Locale locale) {
        return text(locale, type.getName(), type.getName());
    }

    /** Name of a feature without its unit, as 'Throat depth'. */
    public static String of(EStructuralFeature feature, Locale locale) {
        ResourceBundle texts = texts(locale);
        String special = feature.getEContainingClass().getName() + "." + feature.getName();
        return texts.containsKey(special) ? texts.getString(special) : text(locale, feature.getName(), feature.getName());
    }

    /** Name of a feature with its unit, as 'Throat depth [mm]'. */
    public static String withUnit(EStructuralFeature feature, Locale locale) {
        String unit = Units.of(feature.getName());
        return unit.isEmpty() ? of(feature, locale) : of(feature, locale) + " [" + unit + "]";
    }

    /** Name of an enumeration literal, as 'Corner radius'. */
    public static String of(Enumerator literal, Locale locale) {
        return text(locale, literal.getName(), literal.getLiteral());
    }

    /**
     * Name of an object that a person recognises: its kind and name, and for an object without a name also the object it
     * belongs to, as 'Tool 'Round 10' (r10)' or 'Clamps of Machine 'North press' (north)'.
     */
    public static String of(EObject object, Locale locale) {
        String kind = of(object.eClass(), locale);
        if (object instanceof Named named) {
            return kind + quoted(named);
        }
        String id = EcoreUtil.getID(object);
        String own = id == null ? kind + position(object) : kind + " (" + id + ")";
        EObject owner = object.eContainer();
        return owner == null ? own : own + (locale.getLanguage().equals("de") ? " von " : " of ") + of(owner, locale);
    }

    private static String quoted(Named named) {
        String name = named.getName() == null || named.getName().isBlank() ? numberOf(named) : named.getName();
        String id = named.getId() == null ? "" : " (" + named.getId() + ")";
        return (name == null || name.isBlank() ? "" : " '" + name + "'") + id;
    }

    private static String numberOf(Named named) {
        return switch (named) {
            case Item item -> item.getNumber();
            case Order order -> order.getNumber();
            default -> null;
        };
    }

    private static String position(EObject object) {
        EStructuralFeature in = object.eContainingFeature();
        if (in == null || !in.isMany()) {
            return "";
        }
        return " " + (((List<?>) object.eContainer().eGet(in)).indexOf(object) + 1);
    }

    private static String text(Locale locale, String key, String otherwise) {
        ResourceBundle texts = texts(locale);
        return texts.containsKey(key) ? texts.getString(key) : otherwise;
    }

    private static ResourceBundle texts(Locale locale) {
        return ResourceBundle.getBundle("punchwright.model.names.names", locale, Names.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }
}
