// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.eclipse.emf.ecore.xmi.XMLResource;

/**
 * The format version of a file and the guards around reading it.
 *
 * <p>The version stands in a processing instruction before the root element, {@code <?punchwright format="1"?>}; a file without
 * one is of format 0. It is read without making any object, so that a newer file can be refused before it is misread.</p>
 */
final class FileFormat {

    /** The format that is written. */
    static final int CURRENT = 1;
    /** Largest file that is read, bytes: 512 MB. */
    static final long MAX_BYTES = 512L << 20;

    private static final String TARGET = "punchwright";
    private static final Pattern VERSION = Pattern.compile("format=\"(\\d{1,6})\"");

    private FileFormat() {
    }

    /** Reads the version and refuses what must not be read on. */
    static int versionOf(Path file, byte[] content) throws WorkspaceException {
        if (content.length == 0) {
            throw new WorkspaceException(FileProblem.EMPTY, file, null);
        }
        int version = 0;
        String text = utf8(file, content);
        try {
            XMLStreamReader reader = secureReaders().createXMLStreamReader(new StringReader(text));
            while (reader.getEventType() != XMLStreamConstants.START_ELEMENT) {
                if (reader.getEventType() == XMLStreamConstants.DTD) {
                    throw new WorkspaceException(FileProblem.DOCTYPE, file, null);
                }
                if (reader.getEventType() == XMLStreamConstants.PROCESSING_INSTRUCTION && TARGET.equals(reader.getPITarget())) {
                    version = parse(file, reader.getPIData());
                }
                reader.next();
            }
            reader.close();
        } catch (XMLStreamException | RuntimeException e) {
            throw new WorkspaceException(FileProblem.DAMAGED, file, e, oneLine(e));
        }
        if (version > CURRENT) {
            throw new WorkspaceException(FileProblem.NEWER_FORMAT, file, null, version, CURRENT);
        }
        return version;
    }

    private static String utf8(Path file, byte[] content) throws WorkspaceException {
        ByteBuffer bytes = ByteBuffer.wrap(content);
        try {
            return StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(bytes).toString();
        } catch (CharacterCodingException e) {
            throw new WorkspaceException(FileProblem.DAMAGED, file, e, "byte " + (bytes.position() + 1) + " is no UTF-8 text");
        }
    }

    private static int parse(Path file, String data) throws WorkspaceException {
        Matcher matcher = VERSION.matcher(data == null ? "" : data);
        if (!matcher.find()) {
            throw new WorkspaceException(FileProblem.DAMAGED, file, null, "the format version '" + data + "' is no number");
        }
        return Integer.parseInt(matcher.group(1));
    }

    /** Puts the version after the XML declaration, which ends the first line. */
    static byte[] withVersion(byte[] xml) {
        int lineEnd = 0;
        while (xml[lineEnd] != '\n') {
            lineEnd++;
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream(xml.length + 64);
        out.write(xml, 0, lineEnd + 1);
        byte[] instruction = ("<?" + TARGET + " format=\"" + CURRENT + "\"?>\n").getBytes(StandardCharsets.UTF_8);
        out.write(instruction, 0, instruction.length);
        out.write(xml, lineEnd + 1, xml.length - lineEnd - 1);
        return out.toByteArray();
    }

    /** Load options that keep the XML parser from fetching anything. */
    static Map<Object, Object> secureLoadOptions() {
        Map<String, Boolean> features = new LinkedHashMap<>();
        features.put("http://apache.org/xml/features/disallow-doctype-decl", true);
        features.put("http://xml.org/sax/features/external-general-entities", false);
        features.put("http://xml.org/sax/features/external-parameter-entities", false);
        features.put(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        Map<Object, Object> options = new LinkedHashMap<>();
        options.put(XMLResource.OPTION_PARSER_FEATURES, features);
        options.put(XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true);
        return options;
    }

    static String oneLine(Throwable e) {
        String text = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        return text.replaceAll("\\s+", " ").strip();
    }

    private static XMLInputFactory secureReaders() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLReporter((message, type, information, location) -> {
        });
        return factory;
    }
}
