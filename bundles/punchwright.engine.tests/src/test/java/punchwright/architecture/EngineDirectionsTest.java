// SPDX-License-Identifier: EPL-2.0
package punchwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.onlyDependOnClassesThat;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The engine is pure Java and its data flow one way: a stage never knows a later one. */
class EngineDirectionsTest {

    private static final String ENGINE = "punchwright.engine";
    /** What every stage may use and what itself knows no stage. */
    private static final List<String> BASE = List.of("finding", "geometry");
    /** The way of the data, first to last. */
    private static final List<String> STAGES = List.of("drawing", "feature", "press", "tooling", "nesting", "holding",
            "sequence", "motion", "proof", "costing", "planning", "advice");

    private static JavaClasses engine;

    @BeforeAll
    static void readClasses() {
        engine = new ClassFileImporter().importPackages(ENGINE)
                .that(new DescribedPredicate<JavaClass>("are of the engine bundle") {
            @Override
            public boolean test(JavaClass type) {
                return type.getSource().map(s -> !s.getUri().toString().contains("test-classes")).orElse(false);
            }
        });
    }

    @Test
    void everyPackageIsBaseOrStageSoThatNoneEscapesTheRules() {
        Set<String> found = new TreeSet<>();
        engine.forEach(type -> found.add(type.getPackageName()));
        assertTrue(found.remove(ENGINE), "no class of the engine was read");
        Set<String> known = new TreeSet<>();
        Stream.concat(BASE.stream(), STAGES.stream()).forEach(name -> known.add(ENGINE + "." + name));
        found.removeIf(name -> known.stream().anyMatch(k -> name.equals(k) || name.startsWith(k + ".")));
        assertEquals(Set.of(), found);
    }

    @Test
    void engineKnowsOnlyJavaAndItsTwoLibraries() {
        classes().should(onlyDependOnClassesThat(resideInAnyPackage("java..", "punchwright.engine..", "org.locationtech.jts..",
                "org.ojalgo..")))
                .check(engine);
    }

    /** One place calls the library of integer programs, so that it can be exchanged. */
    @Test
    void onlyTheArithmeticOfSetUpsKnowsTheOptimisationLibrary() {
        noClasses().that().resideOutsideOfPackage(ENGINE + ".tooling.setup").should().dependOnClassesThat()
                .resideInAnyPackage("org.ojalgo..").check(engine);
    }

    @Test
    void engineDrawsNothing() {
        noClasses().should().dependOnClassesThat().resideInAnyPackage("java.awt..", "javax.swing..", "javax.imageio..")
                .check(engine);
    }

    @TestFactory
    List<DynamicTest> baseKnowsNoStage() {
        return BASE.stream().map(name -> DynamicTest.dynamicTest(name, () -> forbid(name, STAGES))).toList();
    }

    @TestFactory
    List<DynamicTest> noStageKnowsALaterOne() {
        List<DynamicTest> tests = new ArrayList<>();
        for (int i = 0; i < STAGES.size() - 1; i++) {
            String stage = STAGES.get(i);
            List<String> later = STAGES.subList(i + 1, STAGES.size());
            tests.add(DynamicTest.dynamicTest(stage, () -> forbid(stage, later)));
        }
        return tests;
    }

    /** The proof counts only when it shares no algorithm with the stages it checks. */
    @Test
    void proofKnowsThePlannersRecordsButNoneOfTheirAlgorithms() {
        DescribedPredicate<JavaClass> own = resideInAnyPackage("java..", "org.locationtech.jts..", ENGINE,
                of("finding"), of("geometry"), of("press"), of("proof"));
        DescribedPredicate<JavaClass> recordsOfOthers = resideInAnyPackage(of("tooling"), of("holding"))
                .and(DescribedPredicate.describe("are plain data", type -> type.isRecord() || type.isEnum()
                || type.isInterface()));
        classes().that().resideInAPackage(of("proof")).should(onlyDependOnClassesThat(own.or(recordsOfOthers))).check(engine);
    }

    private static void forbid(String name, List<String> others) {
        String[] packages = others.stream().map(EngineDirectionsTest::of).toArray(String[]::new);
        noClasses().that().resideInAPackage(of(name)).should().dependOnClassesThat().resideInAnyPackage(packages)
                .allowEmptyShould(true).check(engine);
    }

    private static String of(String name) {
        return ENGINE + "." + name + "..";
    }
}
