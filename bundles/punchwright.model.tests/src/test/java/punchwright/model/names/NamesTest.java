// SPDX-License-Identifier: EPL-2.0
package punchwright.model.names;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import punchwright.model.Samples;
import punchwright.model.Texts;
import punchwright.model.plan.PlanPackage;
import punchwright.model.shop.ShopPackage;
import punchwright.model.shop.ToolShape;
import punchwright.model.work.WorkPackage;

/** The model is documented and named completely. */
class NamesTest {

    private static final List<EPackage> PACKAGES = List.of(ShopPackage.eINSTANCE, WorkPackage.eINSTANCE, PlanPackage.eINSTANCE);

    @Test
    void everyClassFeatureAndLiteralHasAName() {
        Properties names = Texts.load("/punchwright/model/names/names.properties");
        List<String> missing = new ArrayList<>();
        for (EPackage part : PACKAGES) {
            for (EClassifier classifier : part.getEClassifiers()) {
                need(names, missing, classifier);
                if (classifier instanceof EClass type) {
                    type.getEStructuralFeatures().forEach(f -> need(names, missing, f));
                } else if (classifier instanceof EEnum kind) {
                    kind.getELiterals().forEach(l -> need(names, missing, l));
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    private static void need(Properties names, List<String> missing, ENamedElement element) {
        if (!names.containsKey(element.getName())) {
            missing.add(element.getName());
        }
    }

    @Test
    void namesAreAlikeInBothLanguages() {
        Texts.assertAlike("/punchwright/model/names/names.properties", "/punchwright/model/names/names_de.properties");
    }

    @Test
    void everyClassFeatureAndLiteralIsDocumented() {
        List<String> missing = new ArrayList<>();
        for (EPackage part : PACKAGES) {
            part.eAllContents().forEachRemaining(o -> {
                boolean counts = o instanceof EClassifier || o instanceof EStructuralFeature || o instanceof EEnumLiteral;
                if (counts && (EcoreUtil.getDocumentation((EModelElement) o) == null
                        || EcoreUtil.getDocumentation((EModelElement) o).length() < 3)) {
                    missing.add(((ENamedElement) o).getName());
                }
            });
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void unitsComeFromTheNameAndStandInTheDocumentation() {
        assertEquals("mm", Units.of("throatDepthMm"));
        assertEquals("mm/s\u00b2", Units.of("accelerationXMmPerS2"));
        assertEquals("kg/dm\u00b3", Units.of("densityKgPerDm3"));
        assertEquals("\u00a4/kg", Units.of("pricePerKg"));
        assertEquals("min", Units.of("minutesPerPiece"));
        assertEquals("\u00a4", Units.of("perPiece"));
        assertEquals("", Units.of("quantity"));
        List<String> wrong = new ArrayList<>();
        for (EPackage part : PACKAGES) {
            part.eAllContents().forEachRemaining(o -> {
                if (o instanceof EStructuralFeature f && f.getEType() == EcorePackage.Literals.EDOUBLE) {
                    String unit = Units.of(f.getName()).replace("\u00b2", "2").replace("\u00b3", "3").replace("%/a", "per cent")
                            .replace("\u00a4", "money").replace("%", "per cent").replaceFirst("^\u00b0", "degrees")
                            .replace("1/min", "/min");
                    if (!unit.isEmpty() && !EcoreUtil.getDocumentation(f).contains(unit.split("/| ")[0])) {
                        wrong.add(f.getEContainingClass().getName() + "." + f.getName() + " [" + unit + "]: "
                                + EcoreUtil.getDocumentation(f));
                    }
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void objectsAreNamedByKindNameAndPlace() {
        var library = Samples.library();
        assertEquals("Tool 'Tool r10' (r10)", Names.of(library.getTools().get(0), Locale.ENGLISH));
        assertEquals("Klemmen von Maschine 'Test press' (press)", Names.of(library.getMachines().get(0).getClamps(),
                Locale.GERMAN));
        assertTrue(Names.withUnit(ShopPackage.Literals.MACHINE__THROAT_DEPTH_MM, Locale.GERMAN).equals("Ausladung [mm]"));
        assertEquals("Corner radius", Names.of(ToolShape.CORNER_RADIUS, Locale.ENGLISH));
    }
}
