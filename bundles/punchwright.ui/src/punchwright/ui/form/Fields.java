// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.swt.SWT;

import punchwright.model.shop.Named;
import punchwright.ui.table.Column;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Fields and columns by the names of the model's features, for the tables that describe forms. */
public final class Fields {

    private Fields() {
    }

    /** The feature of a name; a wrong name is a fault of the program and stops it here. */
    public static EStructuralFeature feature(EClass type, String name) {
        EStructuralFeature feature = type.getEStructuralFeature(name);
        if (feature == null) {
            throw new IllegalArgumentException("The model has no " + type.getName() + "." + name);
        }
        return feature;
    }

    /** A group of fields; names like {@code clamps.count} reach into a contained object, {@code clamps.*} takes all it has. */
    public static FieldGroup group(String titleKey, EClass type, String... names) {
        List<Field> fields = new ArrayList<>();
        for (String name : names) {
            int point = name.indexOf('.');
            if (point < 0) {
                fields.add(new Field(null, feature(type, name)));
            } else {
                EReference via = (EReference) feature(type, name.substring(0, point));
                fields.addAll(inner(via, name.substring(point + 1)));
            }
        }
        return new FieldGroup(Texts.of(titleKey), List.copyOf(fields));
    }

    private static List<Field> inner(EReference via, String name) {
        EClass type = via.getEReferenceType();
        if (!"*".equals(name)) {
            return List.of(new Field(via, feature(type, name)));
        }
        return type.getEAllAttributes().stream().map(a -> new Field(via, a)).toList();
    }

    /** Every attribute and single reference of a class, for small objects. */
    public static FieldGroup all(EClass type) {
        List<Field> fields = new ArrayList<>();
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (!(feature instanceof EReference r) || !r.isContainment() && !r.isMany()) {
                fields.add(new Field(null, feature));
            }
        }
        return new FieldGroup(Texts.of(type), fields);
    }

    /** A column for a feature; a name like {@code price:2} fixes the decimals, without it words or whole figures. */
    public static Column<EObject> column(EClass type, String spec, int width, String currency) {
        String[] parts = spec.split(":");
        EStructuralFeature feature = feature(type, parts[0]);
        String header = Units.header(Texts.of(feature), Units.of(feature, currency));
        boolean figure = !feature.isMany() && (feature.getEType() == EcorePackage.Literals.EDOUBLE
                || feature.getEType() == EcorePackage.Literals.EINT);
        if (!figure) {
            return new Column<>(header, width, SWT.LEFT, o -> cell(feature, o.eGet(feature)),
                    o -> cell(feature, o.eGet(feature)));
        }
        int decimals = parts.length > 1 ? Integer.parseInt(parts[1]) : 0;
        return new Column<>(header, width, SWT.RIGHT, o -> Numbers.fixed(((Number) o.eGet(feature)).doubleValue(), decimals),
                o -> ((Number) o.eGet(feature)).doubleValue());
    }

    /** Columns from lines like {@code "name 160", "lengthMm:2 80"}; a third word names a shorter header. */
    public static List<Column<EObject>> columns(EClass type, String currency, String... specs) {
        return Arrays.stream(specs).map(s -> s.split(" ")).map(s -> {
            Column<EObject> column = column(type, s[0], Integer.parseInt(s[1]), currency);
            return s.length < 3 ? column : column.called(Texts.of("head." + s[2]));
        }).toList();
    }

    /** A value as a table shows it. */
    static String cell(EStructuralFeature feature, Object value) {
        return switch (value) {
            case null -> "";
            case Enumerator literal -> Texts.of(literal);
            case Named named -> named.getName() == null ? named.getId() : named.getName();
            case Boolean yes -> yes ? Texts.of("yes") : Texts.of("no");
            case List<?> many when !many.isEmpty() && many.get(0) instanceof Enumerator ->
                String.join(", ", many.stream().map(v -> Texts.of((Enumerator) v)).toList());
            default -> Values.show(feature, value);
        };
    }
}
