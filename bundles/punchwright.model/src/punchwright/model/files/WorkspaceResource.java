// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.InternalEList;
import org.eclipse.emf.ecore.xmi.UnresolvedReferenceException;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;

/**
 * One file of a workspace: guards and migrates on load, saves atomically.
 *
 * <p>References inside the file that lead nowhere do not keep it from being read; they are kept as problems. Everything else
 * that EMF cannot read does, since saving would lose it.</p>
 */
final class WorkspaceResource extends XMIResourceImpl {

    private final Path file;
    private final AtomicFiles files;
    private final List<WorkspaceException> problems = new ArrayList<>();
    private byte[] digestOnDisk;

    WorkspaceResource(URI uri, Path file, AtomicFiles files) {
        super(uri);
        this.file = file;
        this.files = files;
        setEncoding("UTF-8");
    }

    Path file() {
        return file;
    }

    /** Notes and warnings of the last load: migrations and references that lead nowhere. */
    List<WorkspaceException> problems() {
        return problems;
    }

    @Override
    protected boolean useIDs() {
        return true;
    }

    @Override
    public void doLoad(InputStream stream, Map<?, ?> options) throws IOException {
        byte[] content = stream.readNBytes((int) FileFormat.MAX_BYTES + 1);
        if (content.length > FileFormat.MAX_BYTES) {
            throw new WorkspaceException(FileProblem.TOO_LARGE, file, null, content.length >> 20, FileFormat.MAX_BYTES >> 20);
        }
        problems.clear();
        int version = FileFormat.versionOf(file, content);
        Migrations.Result migrated = Migrations.migrate(file, content, version);
        if (!migrated.notes().isEmpty()) {
            problems.add(new WorkspaceException(FileProblem.MIGRATED, file, null, version, FileFormat.CURRENT,
                    String.join("; ", migrated.notes())));
        }
        setIntrinsicIDToEObjectMap(new HashMap<>());
        try {
            super.doLoad(new ByteArrayInputStream(migrated.content()), FileFormat.secureLoadOptions());
        } catch (IOException | RuntimeException e) {
            keepOrRefuse(e);
        } finally {
            setIntrinsicIDToEObjectMap(null);
        }
        digestOnDisk = digest(content);
    }

    private void keepOrRefuse(Exception e) throws WorkspaceException {
        if (e instanceof WorkspaceException w) {
            throw w;
        }
        boolean onlyDangling = !errors().isEmpty() && errors().stream().allMatch(UnresolvedReferenceException.class::isInstance);
        if (!onlyDangling) {
            Throwable cause = errors().isEmpty() ? e : (Throwable) errors().get(0);
            throw new WorkspaceException(FileProblem.DAMAGED, file, e, causeText(cause));
        }
        for (Diagnostic error : errors()) {
            problems.add(new WorkspaceException(FileProblem.DANGLING, file, (Throwable) error, causeText((Throwable) error)));
        }
    }

    private List<Diagnostic> errors() {
        return errors == null ? List.of() : errors;
    }

    private String causeText(Throwable cause) {
        String text = FileFormat.oneLine(cause).replace(getURI().toString(), file.getFileName().toString());
        return cause instanceof Diagnostic d && d.getLine() > 0 && !text.contains(", " + d.getLine() + ",")
                ? "line " + d.getLine() + ": " + text : text;
    }

    /** The bytes that a save would write. */
    byte[] toBytes() throws WorkspaceException {
        Map<Object, Object> options = new LinkedHashMap<>();
        options.put(XMLResource.OPTION_LINE_WIDTH, Integer.MAX_VALUE);
        options.put(XMLResource.OPTION_FORMATTED, true);
        options.put(XMLResource.OPTION_CONFIGURATION_CACHE, true);
        options.put(XMLResource.OPTION_LINE_DELIMITER, "\n");
        options.put(XMLResource.OPTION_ENCODING, "UTF-8");
        requireReferencesInFiles();
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            super.doSave(out, options);
            return FileFormat.withVersion(out.toByteArray());
        } catch (IOException | RuntimeException e) {
            throw new WorkspaceException(FileProblem.NOT_WRITABLE, file, e, FileFormat.oneLine(rootOf(e)));
        }
    }

    /** An object that stands in no file could not be found again: refuse before it is written as a name that leads nowhere. */
    private void requireReferencesInFiles() throws WorkspaceException {
        for (Iterator<EObject> all = getAllContents(); all.hasNext();) {
            EObject object = all.next();
            Iterator<EObject> targets = ((InternalEList<EObject>) object.eCrossReferences()).basicIterator();
            while (targets.hasNext()) {
                EObject target = targets.next();
                if (!target.eIsProxy() && target.eResource() == null) {
                    throw new WorkspaceException(FileProblem.NOT_WRITABLE, file, null,
                            nameOf(object) + " refers to " + nameOf(target) + ", which stands in no file");
                }
            }
        }
    }

    private static String nameOf(EObject object) {
        String id = EcoreUtil.getID(object);
        return object.eClass().getName() + (id == null ? "" : " '" + id + "'");
    }

    private static Throwable rootOf(Throwable e) {
        return e.getCause() == null ? e : e.getCause();
    }

    /** Takes what stands on disk now as known, so that the next save may replace it. */
    void replaceOnSave() throws WorkspaceException {
        digestOnDisk = digestOnDisk();
    }

    /**
     * Saves when the content differs from what is on disk.
     *
     * @return whether something was written
     * @throws WorkspaceException when it cannot be written, or the file was changed by another program since it was read
     */
    boolean saveIfChanged() throws WorkspaceException {
        byte[] content = toBytes();
        byte[] wanted = digest(content);
        byte[] onDisk = digestOnDisk();
        if (onDisk != null && MessageDigest.isEqual(onDisk, wanted)) {
            digestOnDisk = wanted;
            return false;
        }
        if (onDisk != null && (digestOnDisk == null || !MessageDigest.isEqual(onDisk, digestOnDisk))) {
            throw new WorkspaceException(FileProblem.CHANGED_OUTSIDE, file, null);
        }
        files.save(file, content);
        digestOnDisk = wanted;
        setModified(false);
        return true;
    }

    /** Whether another program changed or removed the file since it was read or saved. */
    boolean changedOutside() throws WorkspaceException {
        byte[] onDisk = digestOnDisk();
        return digestOnDisk != null && (onDisk == null || !MessageDigest.isEqual(onDisk, digestOnDisk));
    }

    private byte[] digestOnDisk() throws WorkspaceException {
        try {
            return Files.exists(file) ? digest(Files.readAllBytes(file)) : null;
        } catch (IOException e) {
            throw new WorkspaceException(FileProblem.READ_FAILED, file, e, FileFormat.oneLine(e));
        }
    }

    private static byte[] digest(byte[] content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(content);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    @Override
    public void save(Map<?, ?> options) throws IOException {
        saveIfChanged();
    }
}
