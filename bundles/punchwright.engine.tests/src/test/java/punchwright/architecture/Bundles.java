// SPDX-License-Identifier: EPL-2.0
package punchwright.architecture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The bundles of this checkout, as their manifests and sources describe them. */
final class Bundles {

    /** The folder that holds the bundles; tests run in the folder of their own module. */
    static final Path FOLDER = Path.of("..").toAbsolutePath().normalize();

    private static final Pattern OUTSIDE_QUOTES = Pattern.compile(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)");

    private Bundles() {
    }

    /** What each bundle requires or imports, by bundle; test bundles left out. */
    static Map<String, Set<String>> needs() {
        Map<String, Set<String>> needs = new TreeMap<>();
        try (Stream<Path> folders = Files.list(FOLDER)) {
            folders.map(f -> f.resolve("META-INF/MANIFEST.MF")).filter(Files::exists)
                    .filter(f -> !f.toString().contains(".tests")).sorted().forEach(f -> {
                        Attributes manifest = manifest(f);
                        needs.put(names(manifest, "Bundle-SymbolicName").iterator().next(), needs(manifest));
                    });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return needs;
    }

    /** The text of each Java source of a bundle, hand-written and generated, by path. */
    static Map<Path, String> sources(String bundle) {
        Map<Path, String> sources = new LinkedHashMap<>();
        for (String folder : new String[] {"src", "src-gen"}) {
            Path start = FOLDER.resolve(bundle).resolve(folder);
            if (Files.exists(start)) {
                try (Stream<Path> files = Files.walk(start)) {
                    files.filter(f -> f.toString().endsWith(".java")).sorted().forEach(f -> sources.put(f, text(f)));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
        return sources;
    }

    private static Set<String> needs(Attributes manifest) {
        Set<String> all = new TreeSet<>(names(manifest, "Require-Bundle"));
        all.addAll(names(manifest, "Import-Package"));
        return all;
    }

    private static Set<String> names(Attributes manifest, String header) {
        Set<String> names = new TreeSet<>();
        String value = manifest.getValue(header);
        if (value != null) {
            for (String clause : OUTSIDE_QUOTES.split(value)) {
                names.add(clause.split(";", 2)[0].strip());
            }
        }
        return names;
    }

    private static Attributes manifest(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new Manifest(in).getMainAttributes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
