// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import punchwright.model.Samples;
import punchwright.model.Texts;
import punchwright.model.names.Names;
import punchwright.model.plan.PlanPackage;
import punchwright.model.plan.Severity;
import punchwright.model.shop.ShopPackage;
import punchwright.model.shop.Standing;
import punchwright.model.work.WorkPackage;

/** Every rule lets the good pass and reports the bad. */
class RulesTest {

    static Stream<String> codes() {
        return Rules.list().stream().map(Rule::code);
    }

    @Test
    void theSampleWorldBreaksNoRule() {
        assertEquals(List.of(), new World().check());
    }

    @Test
    void everyRuleHasACaseAndThereAreEnough() {
        assertEquals(new TreeSet<>(codes().toList()), new TreeSet<>(RuleCases.all().keySet()));
        assertTrue(Rules.list().size() >= 40, "rules: " + Rules.list().size());
    }

    @ParameterizedTest
    @MethodSource("codes")
    void goodPassesAndBadIsReported(String code) {
        World good = new World();
        RuleCases.all().get(code).accept(good, false);
        assertEquals(List.of(), of(code, good));
        World bad = new World();
        RuleCases.all().get(code).accept(bad, true);
        List<Violation> found = of(code, bad);
        assertFalse(found.isEmpty(), () -> code + " is not reported; reported are " + bad.check());
        readable(found.get(0));
    }

    private static List<Violation> of(String code, World world) {
        return world.check().stream().filter(v -> v.code().equals(code)).toList();
    }

    private static void readable(Violation violation) {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String message = violation.message(locale);
            assertFalse(message.contains("{") || message.contains("null") || message.contains("@"), message);
            assertFalse(violation.remedy(locale).contains("{") || violation.remedy(locale).length() < 8,
                    violation.remedy(locale));
            assertTrue(message.startsWith(Names.of(violation.object(), locale)), message);
        }
        assertNotEquals(violation.message(Locale.ENGLISH), violation.message(Locale.GERMAN));
    }

    @Test
    void messagesNameObjectValueUnitAndWayOut() {
        World world = new World();
        world.use().setForceKn(250.25);
        Violation violation = of("PW-M-141", world).get(0);
        assertEquals("Tool in use (use-1) of Sheet job (job-1) of Plan 'First order on the test press' (o-100-press) "
                + "needs 250.25 kN; "
                + "the limit is 220 kN.", violation.message(Locale.ENGLISH));
        assertTrue(violation.message(Locale.GERMAN).endsWith("braucht 250,25 kN; die Grenze ist 220 kN."));
        assertEquals(Severity.ERROR, violation.severity());
        assertEquals("Choose another place, tool or machine, or grind a shear angle.", violation.remedy(Locale.ENGLISH));
    }

    @Test
    void aHolderTakesOneInsertInEachPositionAndNoSingleToolBesideIt() {
        World world = new World();
        world.standing().setHolder(world.library.getHolders().get(0));
        world.standing().setInsertPosition(1);
        Standing second = Samples.SHOP.createStanding();
        second.setPlace(world.place());
        second.setTool(world.tool());
        second.setHolder(world.library.getHolders().get(0));
        second.setInsertPosition(2);
        world.machine().getStanding().add(second);
        assertEquals(List.of(), of("PW-M-048", world));
        second.setInsertPosition(1);
        assertEquals(1, of("PW-M-048", world).size());
        second.setHolder(null);
        second.setInsertPosition(0);
        assertEquals(1, of("PW-M-048", world).size());
    }

    @Test
    void theDiagnosticianCarriesCodeObjectAndFeature() {
        ModelValidator.register();
        World world = new World();
        world.machine().setThroatDepthMm(-1);
        Diagnostic diagnostic = Diagnostician.INSTANCE.validate(world.library);
        assertEquals(Diagnostic.ERROR, diagnostic.getSeverity());
        Diagnostic first = diagnostic.getChildren().stream().filter(d -> d.getCode() == 4).findFirst().orElseThrow();
        assertEquals(ModelValidator.SOURCE, first.getSource());
        assertEquals(world.machine(), first.getData().get(0));
        assertEquals(ShopPackage.Literals.MACHINE__THROAT_DEPTH_MM, first.getData().get(1));
        assertTrue(first.getMessage().startsWith("PW-M-004: Machine 'Test press' (press): Throat depth is -1 mm"),
                first.getMessage());
    }

    @Test
    void emptyObjectsOfEveryClassNeverMakeARuleThrow() {
        for (var type : List.of(ShopPackage.eINSTANCE, WorkPackage.eINSTANCE,
                PlanPackage.eINSTANCE)) {
            type.getEClassifiers().stream().filter(EClass.class::isInstance)
                    .map(EClass.class::cast).filter(c -> !c.isAbstract()).forEach(c -> {
                        for (Violation violation : Checks.of(c.getEPackage().getEFactoryInstance().create(c))) {
                            assertFalse(violation.message(Locale.ENGLISH).contains("{"), violation.code());
                        }
                    });
        }
    }

    @Test
    void sameKeysAndPlaceholdersInEnglishAndGerman() {
        Texts.assertAlike("/punchwright/model/check/rules.properties", "/punchwright/model/check/rules_de.properties");
        TreeSet<String> wanted = new TreeSet<>();
        codes().forEach(c -> wanted.addAll(List.of(c + ".title", c + ".message", c + ".remedy")));
        assertEquals(wanted, new TreeSet<>(Texts.load("/punchwright/model/check/rules.properties").stringPropertyNames()));
    }
}
