// SPDX-License-Identifier: EPL-2.0
package punchwright.model.codegen;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenClass;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.GenPackage;
import org.eclipse.emf.codegen.ecore.genmodel.GenRuntimeVersion;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Generates the Java code of the model and of its item providers from the .ecore and .genmodel files.
 *
 * <p>Use: {@code GenerateModel BUNDLES_FOLDER SCRATCH_FOLDER}. The code is generated into the scratch folder and then brought
 * over to {@code punchwright.model/src-gen} and {@code punchwright.model.edit/src-gen}: only files whose content differs are
 * written, and files no longer generated are deleted, so that an incremental compiler has nothing to do when nothing changed.
 * Everything else that EMF would generate (manifests, build files, pictures) stays in the scratch folder; those files are kept
 * by hand. The labels of the item providers are written from the model's names, see {@link LabelFiles}.</p>
 */
public final class GenerateModel {

    private static final String MODEL = "punchwright.model";
    private static final String EDIT = "punchwright.model.edit";

    private GenerateModel() {
    }

    /**
     * Runs the generation.
     *
     * @param args the folder that holds the bundles, and a scratch folder
     * @throws IOException when a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        if (args.length != 2) {
            throw new IllegalArgumentException("Usage: GenerateModel BUNDLES_FOLDER SCRATCH_FOLDER, got "
                    + Arrays.toString(args));
        }
        Path bundles = Path.of(args[0]).toAbsolutePath().normalize();
        Path scratch = Path.of(args[1]).toAbsolutePath().normalize();
        deleteTree(scratch);
        GenModel genModel = load(bundles.resolve(MODEL).resolve("model/punchwright.genmodel"));
        generate(genModel, scratch);
        new LabelFiles(bundles.resolve(MODEL).resolve("src/punchwright/model/names")).write(
                scratch.resolve(EDIT).resolve("plugin.properties"), scratch.resolve(EDIT).resolve("src-gen"));
        int changed = bringOver(scratch.resolve(MODEL).resolve("src-gen"), bundles.resolve(MODEL).resolve("src-gen"));
        changed += bringOver(scratch.resolve(EDIT).resolve("src-gen"), bundles.resolve(EDIT).resolve("src-gen"));
        System.out.println("Model code generated, files changed: " + changed);
    }

    private static GenModel load(Path file) {
        ResourceSet resources = new ResourceSetImpl();
        Map<String, Object> factories = resources.getResourceFactoryRegistry().getExtensionToFactoryMap();
        factories.put("ecore", new EcoreResourceFactoryImpl());
        factories.put("genmodel", new XMIResourceFactoryImpl());
        GenModelPackage.eINSTANCE.eClass();
        Resource resource = resources.getResource(URI.createFileURI(file.toString()), true);
        GenModel genModel = (GenModel) resource.getContents().get(0);
        genModel.reconcile();
        genModel.setRuntimeVersion(GenRuntimeVersion.get("2.43") == null ? latest() : GenRuntimeVersion.get("2.43"));
        for (GenPackage genPackage : genModel.getGenPackages()) {
            for (GenClass genClass : genPackage.getGenClasses()) {
                genClass.setImage(false);
            }
        }
        requireGood(genModel.diagnose());
        return genModel;
    }

    private static GenRuntimeVersion latest() {
        List<GenRuntimeVersion> versions = GenRuntimeVersion.VALUES;
        return versions.get(versions.size() - 1);
    }

    private static void generate(GenModel genModel, Path scratch) {
        for (String project : List.of(MODEL, EDIT)) {
            EcorePlugin.getPlatformResourceMap().put(project, URI.createFileURI(scratch.resolve(project) + "/"));
        }
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Generator generator = new Generator();
        generator.setInput(genModel);
        genModel.setCanGenerate(true);
        requireGood(generator.generate(genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
        requireGood(generator.generate(genModel, GenBaseGeneratorAdapter.EDIT_PROJECT_TYPE, new BasicMonitor()));
    }

    private static void requireGood(Diagnostic diagnostic) {
        if (diagnostic.getSeverity() < Diagnostic.WARNING) {
            return;
        }
        StringBuilder text = new StringBuilder("The model code cannot be generated: ").append(diagnostic.getMessage());
        for (Diagnostic child : diagnostic.getChildren()) {
            text.append(System.lineSeparator()).append("  ").append(child.getMessage());
        }
        throw new IllegalStateException(text.toString(), diagnostic.getException());
    }

    /** Makes the target folder equal to the source folder and returns how many files had to change. */
    private static int bringOver(Path source, Path target) throws IOException {
        Map<Path, byte[]> wanted = filesOf(source);
        if (wanted.isEmpty()) {
            throw new IllegalStateException("Nothing was generated into " + source);
        }
        int changed = 0;
        for (Path stale : filesOf(target).keySet()) {
            if (!wanted.containsKey(stale)) {
                Files.delete(target.resolve(stale));
                changed++;
            }
        }
        for (Map.Entry<Path, byte[]> file : wanted.entrySet()) {
            Path there = target.resolve(file.getKey());
            byte[] content = withUnixLines(file.getValue());
            if (!Files.exists(there) || !Arrays.equals(Files.readAllBytes(there), content)) {
                Files.createDirectories(there.getParent());
                Files.write(there, content);
                changed++;
            }
        }
        return changed;
    }

    private static byte[] withUnixLines(byte[] content) {
        return new String(content, StandardCharsets.UTF_8).replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static Map<Path, byte[]> filesOf(Path folder) throws IOException {
        Map<Path, byte[]> files = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> walk = Files.walk(folder)) {
                for (Path file : walk.filter(Files::isRegularFile).toList()) {
                    files.put(folder.relativize(file), Files.readAllBytes(file));
                }
            }
        }
        return files;
    }

    private static void deleteTree(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> walk = Files.walk(folder)) {
            for (Path path : walk.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(path);
            }
        }
    }
}
