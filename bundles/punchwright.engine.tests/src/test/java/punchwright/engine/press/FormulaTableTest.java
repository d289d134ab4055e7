// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/**
 * Table of formulas: every public static method of the package that gives a number is held against a published or independent
 * value and against a sweep, by the marks {@link Validates} and {@link Sweeps} on tests.
 */
class FormulaTableTest {

    /** Classes of a package's folder or, in a jar, of its entries; only of the place that holds {@code witness}. */
    private static List<Class<?>> classes(Class<?> witness) throws IOException, URISyntaxException, ReflectiveOperationException {
        URL home = witness.getProtectionDomain().getCodeSource().getLocation();
        Path root = Path.of(home.toURI());
        List<String> names = new ArrayList<>();
        if (Files.isDirectory(root)) {
            try (Stream<Path> files = Files.list(root.resolve("punchwright/engine/press"))) {
                files.forEach(f -> names.add(f.getFileName().toString()));
            }
        } else {
            try (java.util.jar.JarFile jar = new java.util.jar.JarFile(root.toFile())) {
                jar.stream().map(e -> e.getName()).filter(n -> n.startsWith("punchwright/engine/press/"))
                        .forEach(n -> names.add(n.substring(n.lastIndexOf('/') + 1)));
            }
        }
        List<Class<?>> classes = new ArrayList<>();
        for (String name : new TreeSet<>(names)) {
            if (name.endsWith(".class") && !name.startsWith("package-info") && !name.contains("$")) {
                classes.add(Class.forName("punchwright.engine.press." + name.replace(".class", "")));
            }
        }
        return classes;
    }

    /** "Class.method" of each formula. */
    private static Set<String> formulas() throws Exception {
        Set<String> all = new TreeSet<>();
        for (Class<?> c : classes(PunchingForce.class)) {
            for (Method m : c.getDeclaredMethods()) {
                boolean number = m.getReturnType() == double.class || m.getReturnType() == int.class;
                if (Modifier.isPublic(c.getModifiers()) && Modifier.isPublic(m.getModifiers())
                        && Modifier.isStatic(m.getModifiers())
                        && number && !m.isSynthetic()) {
                    all.add(c.getSimpleName() + "." + m.getName());
                }
            }
        }
        return all;
    }

    private record Marks(Set<String> validated, Set<String> swept) {
    }

    private static Marks marks() throws Exception {
        Marks marks = new Marks(new TreeSet<>(), new TreeSet<>());
        for (Class<?> c : classes(FormulaTableTest.class)) {
            for (Method m : c.getDeclaredMethods()) {
                for (Validates v : m.getAnnotationsByType(Validates.class)) {
                    assertTrue(m.isAnnotationPresent(Test.class), m + " is marked and is no test");
                    assertFalse(v.source().isBlank(), m + " names no source");
                    Stream.of(v.formulas()).forEach(f -> marks.validated().add(v.of().getSimpleName() + "." + f));
                }
                for (Sweeps s : m.getAnnotationsByType(Sweeps.class)) {
                    assertTrue(m.isAnnotationPresent(Test.class), m + " is marked and is no test");
                    Stream.of(s.formulas()).forEach(f -> marks.swept().add(s.of().getSimpleName() + "." + f));
                }
            }
        }
        return marks;
    }

    @Test
    void everyFormulaHasAPublishedOrIndependentValue() throws Exception {
        Set<String> missing = formulas();
        assertTrue(missing.size() > 60, "formulas found: " + missing.size());
        missing.removeAll(marks().validated());
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyFormulaHasASweep() throws Exception {
        Set<String> missing = formulas();
        missing.removeAll(marks().swept());
        assertEquals(Set.of(), missing);
    }

    @Test
    void marksNameOnlyFormulasThatExist() throws Exception {
        Set<String> marked = new TreeSet<>(marks().validated());
        marked.addAll(marks().swept());
        marked.removeAll(formulas());
        assertEquals(Set.of(), marked);
    }
}
