// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

import org.apache.xmlbeans.XmlObject;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every part of both workbooks agrees with the published schema of the format (ISO/IEC 29500-1),
        as compiled into POI's full jar. */
class SchemaTest {

    @TempDir
    Path folder;

    @Test
    void bothWorkbooksAgreeWithTheSchema() throws Exception {
        URL schema = schema();
        assumeTrue(schema != null, "skipped: the full schema jar is not there (a Maven build fetches it)");
        SamplePlan first = SamplePlan.create();
        first.cost(Locale.ENGLISH, "TR30");
        SamplePlan second = SamplePlan.create("SH20", "Single head press 20");
        second.cost(Locale.ENGLISH, "SH20");
        Path process = folder.resolve("process.xlsx");
        Path cost = folder.resolve("cost.xlsx");
        ProcessSheetWriter.write(first.plan, first.library, first::outline, Locale.ENGLISH, process);
        CostRollupWriter.write(first.order, List.of(first.plan, second.plan), first.library, Locale.ENGLISH, cost);
        URL xmlBeans = XmlObject.class.getProtectionDomain().getCodeSource().getLocation();
        URL log = Class.forName("org.apache.logging.log4j.LogManager").getProtectionDomain().getCodeSource().getLocation();
        try (URLClassLoader full = new URLClassLoader(new URL[] {schema, xmlBeans, log}, ClassLoader.getPlatformClassLoader())) {
            assertEquals(List.of(), problems(full, process));
            assertEquals(List.of(), problems(full, cost));
        }
    }

    private static URL schema() throws IOException {
        Path folder = Path.of(System.getProperty("schema.folder", "target/schema"));
        if (!Files.isDirectory(folder)) {
            return null;
        }
        try (Stream<Path> jars = Files.list(folder)) {
            Path jar = jars.filter(p -> p.getFileName().toString().startsWith("poi-ooxml-full")).findFirst().orElse(null);
            return jar == null ? null : jar.toUri().toURL();
        }
    }

    /** The schema's classes live in their own loader, so they are called by reflection. */
    private static List<String> problems(ClassLoader full, Path file) throws Exception {
        Object types = full.loadClass("org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder").getField("typeSystem")
                .get(null);
        Class<?> options = full.loadClass("org.apache.xmlbeans.XmlOptions");
        var parse = full.loadClass("org.apache.xmlbeans.SchemaTypeLoader").getMethod("parse", InputStream.class,
                full.loadClass("org.apache.xmlbeans.SchemaType"), options);
        var validate = full.loadClass("org.apache.xmlbeans.XmlObject").getMethod("validate", options);
        List<String> problems = new ArrayList<>();
        int parts = 0;
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (entry.getName().startsWith("xl/") && entry.getName().endsWith(".xml")) {
                    List<Object> errors = new ArrayList<>();
                    Object listening = options.getConstructor().newInstance();
                    options.getMethod("setErrorListener", java.util.Collection.class).invoke(listening, errors);
                    validate.invoke(parse.invoke(types, zip.getInputStream(entry), null, null), listening);
                    errors.forEach(e -> problems.add(entry.getName() + ": " + e));
                    parts++;
                }
            }
        }
        assertTrue(parts > 5, "parts looked at: " + parts);
        return problems;
    }
}
