// SPDX-License-Identifier: EPL-2.0
package punchwright.product;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** One of the products the build lays out: its folder and the native part it must carry. */
record BuiltProduct(String os, String ws, String arch) {

    static final List<BuiltProduct> ALL = List.of(new BuiltProduct("linux", "gtk", "x86_64"),
            new BuiltProduct("linux", "gtk", "aarch64"), new BuiltProduct("win32", "win32", "x86_64"),
            new BuiltProduct("macosx", "cocoa", "x86_64"), new BuiltProduct("macosx", "cocoa", "aarch64"));

    /** The root of the product: where its start script lies. */
    Path root() {
        Path parent = Path.of("..", "target", "products", "punchwright", os, ws, arch);
        return os.equals("macosx") ? parent.resolve("punchwright.app/Contents/Eclipse") : parent.resolve("punchwright");
    }

    /** Name of the bundle with the native part of SWT for this system; the order of its words differs by window system. */
    String nativeBundle() {
        return "org.eclipse.swt." + ws + "." + os + "." + arch;
    }

    /** The symbolic names of the bundles in the folder plugins. */
    Set<String> bundleFiles() throws IOException {
        Set<String> names = new TreeSet<>();
        try (Stream<Path> files = Files.list(root().resolve("plugins"))) {
            files.forEach(f -> names.add(f.getFileName().toString().replaceFirst("_[0-9]+\\..*$", "")));
        }
        return names;
    }

    /** The symbolic names of the bundles that the framework starts with. */
    Set<String> bundlesListed() throws IOException {
        Set<String> names = new TreeSet<>();
        Path list = root().resolve("configuration/org.eclipse.equinox.simpleconfigurator/bundles.info");
        for (String line : Files.readAllLines(list)) {
            if (!line.startsWith("#")) {
                names.add(line.split(",", 2)[0]);
            }
        }
        return names;
    }

    @Override
    public String toString() {
        return os + " " + arch;
    }
}
