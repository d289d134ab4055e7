// SPDX-License-Identifier: EPL-2.0
package punchwright.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** The target platform names each artifact exactly, and the plain test modules take the same versions. */
class TargetPlatformTest {

    private static Document parse(String file) throws IOException, SAXException, ParserConfigurationException {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("..", file).toFile());
    }

    private static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static String child(Element parent, String name) {
        return parent.getElementsByTagName(name).item(0).getTextContent().strip();
    }

    /** Versions by artifact; several where the platform carries several. */
    private static Map<String, List<String>> pins() throws IOException, SAXException, ParserConfigurationException {
        Map<String, List<String>> pins = new TreeMap<>();
        for (Element e : elements(parse("platform/punchwright.platform.target"), "dependency")) {
            pins.computeIfAbsent(child(e, "artifactId"), a -> new ArrayList<>()).add(child(e, "version"));
        }
        return pins;
    }

    @Test
    void everyLocationIsAListOfArtifactsWithoutTheirDependencies() throws IOException, SAXException,
            ParserConfigurationException {
        List<Element> locations = elements(parse("platform/punchwright.platform.target"), "location");
        assertFalse(locations.isEmpty());
        for (Element location : locations) {
            assertEquals("Maven", location.getAttribute("type"), location.getAttribute("label"));
            assertEquals("none", location.getAttribute("includeDependencyDepth"), location.getAttribute("label"));
        }
    }

    @Test
    void everyVersionIsExact() throws IOException, SAXException, ParserConfigurationException {
        Map<String, List<String>> pins = pins();
        assertTrue(pins.size() > 100, "only " + pins.size() + " artifacts were read");
        pins.forEach((artifact, versions) -> versions.forEach(v -> assertTrue(v.matches("\\d+(\\.\\d+)*"), artifact + " " + v)));
    }

    /** Else the tests beside a bundle would run against another version than the product carries. */
    @ParameterizedTest
    @CsvSource({"jts.version, jts-core", "ojalgo.version, ojalgo", "gson.version, gson", "poi.version, poi-ooxml",
            "osgi.version, org.eclipse.osgi",
        "junit.version, junit-jupiter-api",
        "emf.common.version, org.eclipse.emf.common", "emf.ecore.version, org.eclipse.emf.ecore",
        "emf.xmi.version, org.eclipse.emf.ecore.xmi", "emf.change.version, org.eclipse.emf.ecore.change",
        "emf.edit.version, org.eclipse.emf.edit"})
    void plainModulesTakeTheVersionOfTheTargetPlatform(String property, String artifact)
            throws IOException, SAXException, ParserConfigurationException {
        assertEquals(pins().get(artifact), List.of(elements(parse("../pom.xml"), property).get(0).getTextContent().strip()));
    }

    @Test
    void nativePartsOfSwtAreAllOfOneVersion() throws IOException, SAXException, ParserConfigurationException {
        Map<String, List<String>> pins = pins();
        for (BuiltProduct product : BuiltProduct.ALL) {
            assertEquals(pins.get("org.eclipse.swt"), pins.get(product.nativeBundle()), product.nativeBundle());
        }
    }

    @Test
    void noPomAsksForARangeOfVersions() throws IOException {
        try (var poms = Files.walk(Path.of("..", ".."), 3)) {
            List<Path> found = poms.filter(p -> p.endsWith("pom.xml")).toList();
            assertTrue(found.size() > 10, "only " + found.size() + " POMs were read");
            for (Path pom : found) {
                assertFalse(Files.readString(pom).matches("(?s).*<version>\\s*[\\[(].*"), pom + " asks for a range");
            }
        }
    }
}
