// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.URIHandlerImpl;

/** Opens files of one workspace for EMF and nothing else: no other folder, no address on a network, no archive. */
final class WorkspaceUriHandler extends URIHandlerImpl {

    private final WorkspacePaths paths;

    WorkspaceUriHandler(WorkspacePaths paths) {
        this.paths = paths;
    }

    @Override
    public boolean canHandle(URI uri) {
        return true;
    }

    Path fileOf(URI uri) throws WorkspaceException {
        if (!uri.isFile()) {
            throw new WorkspaceException(FileProblem.OUTSIDE, paths.root(), null, uri.toString());
        }
        Path file = Path.of(uri.toFileString());
        if (!paths.holds(file)) {
            throw new WorkspaceException(FileProblem.OUTSIDE, paths.root(), null, uri.toFileString());
        }
        return file;
    }

    @Override
    public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
        Path file = fileOf(uri);
        try {
            return Files.newInputStream(file);
        } catch (NoSuchFileException e) {
            throw new WorkspaceException(FileProblem.MISSING, file, e);
        } catch (IOException e) {
            throw new WorkspaceException(FileProblem.READ_FAILED, file, e, FileFormat.oneLine(e));
        }
    }

    @Override
    public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
        throw new IOException("Files of a workspace are saved through the workspace: " + uri);
    }

    @Override
    public void delete(URI uri, Map<?, ?> options) throws IOException {
        throw new IOException("Files of a workspace are removed through the workspace: " + uri);
    }

    @Override
    public boolean exists(URI uri, Map<?, ?> options) {
        try {
            return Files.exists(fileOf(uri));
        } catch (WorkspaceException e) {
            return false;
        }
    }

    @Override
    public Map<String, ?> getAttributes(URI uri, Map<?, ?> options) {
        return Collections.emptyMap();
    }

    @Override
    public Map<String, ?> contentDescription(URI uri, Map<?, ?> options) {
        return Collections.emptyMap();
    }
}
