// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.FindingCollector;

/** Goes through the sections of a file, one tag after the other. */
final class DxfParser {

    private static final String UTF8_SINCE = "AC1021";

    private interface Section {
        void read() throws IOException;
    }

    private final TagSource tags;
    private final FindingCollector findings;
    private final DxfContent content = new DxfContent();
    private final EntityTarget target;
    private final Entity entity = new Entity();
    private final Map<String, Section> sections = Map.of("HEADER", this::readHeader, "TABLES", this::readTables, "BLOCKS",
            this::readBlocks, "ENTITIES", this::readEntities);
    private boolean ended;
    private String lost = "";

    DxfParser(TagSource tags, FindingCollector findings) {
        this.tags = tags;
        this.findings = findings;
        this.target = new EntityTarget(findings);
    }

    DxfContent parse() throws IOException {
        target.open(content.modelSpace);
        if (!toFirstSection()) {
            throw new DxfException(Finding.of(DxfReason.NOT_DXF, findings.subject(), notDxf()));
        }
        boolean eof = false;
        while (!ended && !eof) {
            if (startsWith("SECTION")) {
                readSection();
            } else if (startsWith("EOF")) {
                eof = true;
            } else {
                advance();
            }
        }
        new ParseReport(findings, content, target).write(tags, eof, lost);
        return content;
    }

    private boolean toFirstSection() throws IOException {
        advance();
        while (!ended && tags.badCodes() == 0 && tags.code() == 999) {
            advance();
        }
        return !ended && tags.badCodes() == 0 && startsWith("SECTION");
    }

    private String notDxf() {
        return tags.badCodes() > 0 || tags.place() <= 2 ? "it does not begin with a group code and SECTION"
                : "no SECTION follows its first comments";
    }

    private boolean startsWith(String word) {
        return tags.code() == 0 && tags.is(word);
    }

    private void advance() throws IOException {
        ended = !tags.next();
    }

    private boolean inSection() {
        return !ended && !(tags.code() == 0 && (tags.is("ENDSEC") || tags.is("EOF") || tags.is("SECTION")));
    }

    private void readSection() throws IOException {
        advance();
        String name = !ended && tags.code() == 2 ? tags.text().toUpperCase(Locale.ROOT) : "";
        if (!ended) {
            sections.getOrDefault(name, () -> skip(name)).read();
        }
        if (ended && lost.isEmpty()) {
            lost = "the end of section " + name;
        }
    }

    private void skip(String name) throws IOException {
        while (inSection()) {
            advance();
        }
    }

    private void readHeader() throws IOException {
        String variable = "";
        for (advance(); inSection(); advance()) {
            if (tags.code() == 9) {
                variable = tags.text();
            } else {
                readVariable(variable);
            }
        }
    }

    private void readVariable(String variable) {
        switch (variable) {
            case "$ACADVER" -> {
                content.acadVersion = tags.text();
                if (content.acadVersion.compareTo(UTF8_SINCE) >= 0) {
                    tags.decodeWith(TextDecoder.GUESS);
                }
            }
            case "$DWGCODEPAGE" -> {
                if (content.acadVersion.compareTo(UTF8_SINCE) < 0) {
                    tags.decodeWith(TextDecoder.ofCodePage(tags.text()));
                }
            }
            case "$INSUNITS" -> content.unitCode = (int) tags.number();
            case "$MEASUREMENT" -> content.measurement = (int) tags.number();
            default -> { }
        }
    }

    private void readTables() throws IOException {
        advance();
        while (inSection()) {
            boolean layer = startsWith("LAYER");
            readTagsOfEntity();
            if (layer && !ended && entity.badNumber() == null) {
                int colour = entity.integer(62, 7);
                String name = entity.text(2, "0");
                content.layers.put(name.toUpperCase(Locale.ROOT), new Layer(name, Math.abs(colour),
                        entity.text(6, "CONTINUOUS").toUpperCase(Locale.ROOT), colour < 0, (entity.integer(70, 0) & 1) != 0));
            }
        }
    }

    /** From a tag of code 0 to the next one; the tags between go into {@link #entity}. */
    private void readTagsOfEntity() throws IOException {
        entity.start(tags.code() == 0 ? tags.text().toUpperCase(Locale.ROOT) : "", tags.place());
        for (advance(); !ended && tags.code() != 0; advance()) {
            entity.take(tags);
        }
    }

    private void readBlocks() throws IOException {
        advance();
        while (inSection()) {
            boolean begin = startsWith("BLOCK");
            readTagsOfEntity();
            if (begin) {
                beginBlock();
            } else if (entity.type().equals("ENDBLK")) {
                target.polyline().finish(target);
                target.open(content.modelSpace);
            } else if (target.block() != content.modelSpace) {
                finishEntity();
            }
        }
        target.polyline().finish(target);
        target.open(content.modelSpace);
    }

    private void beginBlock() {
        String name = entity.text(2, "");
        Block block = new Block(name, entity.badNumber() == null ? entity.point(10) : Vec3.ZERO);
        content.blocks.put(name.toUpperCase(Locale.ROOT), block);
        target.open(block);
        if ((entity.integer(70, 0) & 4) != 0) {
            findings.add(DxfReason.BLOCK_EXTERNAL, name);
        }
    }

    private void readEntities() throws IOException {
        advance();
        while (inSection()) {
            readTagsOfEntity();
            boolean paper = entity.integer(67, 0) == 1;
            if (paper) {
                content.paperEntities++;
            } else if (finishEntity() && !isPart(entity.type())) {
                content.entities.merge(entity.type(), 1, Integer::sum);
            }
        }
        target.polyline().finish(target);
    }

    private static boolean isPart(String type) {
        return type.equals("VERTEX") || type.equals("SEQEND") || type.equals("ATTRIB");
    }

    /** Makes curves of the entity just read; false when the file ended inside it. */
    private boolean finishEntity() {
        if (target.polyline().isOpen() && !isPart(entity.type())) {
            target.polyline().finish(target);
        }
        if (ended && !(tags.endedInsideTag() && tags.code() == 0)) {
            lost = entity.type() + " of line " + entity.place();
            target.polyline().breakUp();
            return false;
        }
        if (entity.badNumber() != null) {
            findings.add(DxfReason.BAD_NUMBER, entity.type(), entity.badNumberPlace(), entity.badNumber());
            target.polyline().breakUp();
        } else {
            EntityHandler handler = EntityHandlers.TABLE.get(entity.type());
            if (handler != null) {
                handler.read(entity, target);
            }
        }
        return true;
    }
}
