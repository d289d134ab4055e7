// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import punchwright.model.plan.PlanStatus;

/**
 * What a list says of a plan, skimmed from its file without loading it; may be read in the background.
 *
 * @param status     its state
 * @param sheets     sheets to be run
 * @param timeS      time of the order, s
 * @param cost       cost of the order
 * @param errors     error findings
 * @param warnings   warning findings
 * @param firstError message and remedy of the first error; empty when there is none
 */
public record PlanSummary(PlanStatus status, int sheets, double timeS, double cost, int errors, int warnings, String firstError) {

    /** The summary of a plan file; empty when there is none or it cannot be read, which opening it will say. */
    public static Optional<PlanSummary> read(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file))) {
            XMLStreamReader reader = factory.createXMLStreamReader(in);
            Skim skim = new Skim();
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT) {
                    skim.element(reader);
                }
            }
            return Optional.of(skim.summary());
        } catch (IOException | XMLStreamException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Collects while the file goes by. */
    private static final class Skim {
        private PlanStatus status = PlanStatus.DRAFT;
        private int sheets;
        private double timeS;
        private double cost;
        private int errors;
        private int warnings;
        private String firstError = "";

        void element(XMLStreamReader reader) {
            switch (reader.getLocalName()) {
                case "Plan" -> {
                    status = PlanStatus.getByName(attribute(reader, "status", "DRAFT"));
                    timeS = Double.parseDouble(attribute(reader, "totalTimeS", "0"));
                    cost = Double.parseDouble(attribute(reader, "totalCost", "0"));
                }
                case "layouts" -> sheets += Integer.parseInt(attribute(reader, "runCount", "1"));
                case "findings" -> finding(reader);
                default -> { }
            }
        }

        private void finding(XMLStreamReader reader) {
            String severity = attribute(reader, "severity", "NOTE");
            warnings += "WARNING".equals(severity) ? 1 : 0;
            if ("ERROR".equals(severity)) {
                errors++;
                if (firstError.isEmpty()) {
                    firstError = (attribute(reader, "message", "") + " " + attribute(reader, "remedy", "")).strip();
                }
            }
        }

        private static String attribute(XMLStreamReader reader, String name, String otherwise) {
            String value = reader.getAttributeValue(null, name);
            return value == null ? otherwise : value;
        }

        PlanSummary summary() {
            return new PlanSummary(status == null ? PlanStatus.DRAFT : status, sheets, timeS, cost, errors, warnings, firstError);
        }
    }
}
