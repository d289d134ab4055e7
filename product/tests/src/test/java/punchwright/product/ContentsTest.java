// SPDX-License-Identifier: EPL-2.0
package punchwright.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the product for each system carries. */
class ContentsTest {

    static List<BuiltProduct> products() {
        return BuiltProduct.ALL;
    }

    @ParameterizedTest
    @MethodSource("products")
    void carriesTheNativePartOfItsOwnSystemOnly(BuiltProduct product) throws IOException {
        Set<String> nativeParts = new TreeSet<>(product.bundleFiles());
        nativeParts.removeIf(name -> !name.matches("org\\.eclipse\\.swt\\.(gtk|win32|cocoa)\\..*"));
        assertEquals(Set.of(product.nativeBundle()), nativeParts);
    }

    @ParameterizedTest
    @MethodSource("products")
    void carriesEveryBundleOfOurs(BuiltProduct product) throws IOException {
        Set<String> own = new TreeSet<>(product.bundleFiles());
        own.removeIf(name -> !name.startsWith("punchwright."));
        assertEquals(new TreeSet<>(Set.of("punchwright.engine", "punchwright.model", "punchwright.model.edit",
                "punchwright.planner", "punchwright.sheets", "punchwright.batch", "punchwright.ui")), own);
    }

    /** A wrapped library imports optionally, so that it goes missing without a word unless the feature names it. */
    @ParameterizedTest
    @MethodSource("products")
    void carriesWhatTheSpreadsheetLibraryReachesAtRunTime(BuiltProduct product) throws IOException {
        Set<String> bundles = product.bundleFiles();
        for (String name : List.of("wrapped.org.apache.poi.poi", "wrapped.org.apache.poi.poi-ooxml",
                "wrapped.org.apache.poi.poi-ooxml-lite", "wrapped.org.apache.xmlbeans.xmlbeans",
                "wrapped.com.zaxxer.SparseBitSet",
                "wrapped.com.github.virtuald.curvesapi", "org.apache.commons.commons-compress", "org.apache.commons.math3",
                "org.apache.commons.commons-io", "org.apache.commons.commons-codec", "org.apache.commons.commons-collections4",
                "org.apache.logging.log4j.api", "org.apache.logging.log4j.to.jul")) {
            assertTrue(bundles.contains(name), name + " is missing");
        }
    }

    @ParameterizedTest
    @MethodSource("products")
    void frameworkStartsWithEveryBundleInTheFolderAndNoOther(BuiltProduct product) throws IOException {
        assertEquals(product.bundleFiles(), product.bundlesListed());
    }

    @ParameterizedTest
    @MethodSource("products")
    void startScriptLiesInTheRootAndMayBeRun(BuiltProduct product) throws IOException {
        boolean windows = product.os().equals("win32");
        Path script = product.root().resolve(windows ? "punchwright.bat" : "punchwright");
        String text = Files.readString(script);
        assertTrue(text.contains("punchwright.batch.app"));
        assertEquals(windows, text.contains("\r\n"));
        assertTrue(windows || Files.isExecutable(script), script + " must carry the right to be run");
        assertTrue(Files.exists(product.root().resolve("LICENSE")));
    }

    @ParameterizedTest
    @MethodSource("products")
    void noPathOfTheBuildMachineIsInATextFile(BuiltProduct product) throws IOException {
        String here = Path.of("..", "..").toAbsolutePath().normalize().toString();
        List<String> naming;
        try (Stream<Path> files = Files.walk(product.root())) {
            naming = files.filter(f -> Files.isRegularFile(f) && !f.toString().endsWith(".jar"))
                    .filter(f -> text(f).contains(here))
                    .map(Path::toString).filter(f -> !f.contains("org.eclipse.core.runtime") && !f.contains("org.eclipse.osgi"))
                    .toList();
        }
        assertEquals(List.of(), naming);
        assertFalse(Files.exists(product.root().resolve("p2")), "what the installer keeps must not be shipped");
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
