// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;

import org.w3c.dom.Document;
import org.xml.sax.helpers.DefaultHandler;

/**
 * All steps from old formats to today's, in order. A new format adds one step here and one test with a file of the old
 * format.
 */
final class Migrations {

    private static final List<Migration> STEPS = List.of(new ForcesInKilonewton());

    /** The content in today's format and what was done to it. */
    record Result(byte[] content, List<String> notes) {
    }

    private Migrations() {
    }

    /** Brings the content of a file from a version to {@link FileFormat#CURRENT}. */
    static Result migrate(Path file, byte[] content, int version) throws WorkspaceException {
        List<String> notes = new ArrayList<>();
        if (version == FileFormat.CURRENT) {
            return new Result(content, notes);
        }
        try {
            Document document = parse(content);
            for (Migration step : STEPS) {
                if (step.from() >= version) {
                    notes.addAll(step.apply(document));
                }
            }
            return new Result(write(document), notes);
        } catch (Exception e) {
            throw new WorkspaceException(FileProblem.DAMAGED, file, e, FileFormat.oneLine(e));
        }
    }

    private static Document parse(byte[] content) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        factory.setXIncludeAware(false);
        factory.setExpandEntityReferences(false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        builder.setErrorHandler(new DefaultHandler());
        return builder.parse(new ByteArrayInputStream(content));
    }

    private static byte[] write(Document document) throws Exception {
        TransformerFactory factory = TransformerFactory.newDefaultInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        Transformer transformer = factory.newTransformer();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        transformer.transform(new DOMSource(document), new StreamResult(out));
        return out.toByteArray();
    }
}
