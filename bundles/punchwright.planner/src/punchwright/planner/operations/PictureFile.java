// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.drawing.DxfWriter;
import punchwright.engine.drawing.SvgWriter;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Placement;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.planner.convert.PartReader;

/**
 * Parts where they lie, alone or on their sheet, ready to be written. A DXF file has the layers {@value #SHEET_LAYER} and
 * {@link DxfWriter#CUT_LAYER}; lengths are in mm.
 *
 * @param sheet the sheet's edge; null without one
 */
record PictureFile(Contour sheet, List<Shape> parts) {

    static final String SHEET_LAYER = "SHEET";

    /** In which form a picture is written; the name is the ending of the file. */
    enum Form {
        DXF, SVG
    }

    static PictureFile of(List<Shape> parts) {
        return new PictureFile(null, parts);
    }

    /** @throws punchwright.planner.convert.InputException when the shape of a part cannot be read any more */
    static PictureFile of(Layout layout, PartReader reader) {
        List<Shape> parts = new ArrayList<>();
        for (Placement p : layout.getPlacements()) {
            parts.add(reader.shape(p.getPart()).moved(new Pose(p.getXMm(), p.getYMm(), p.getAngleDeg(), p.isMirrored())));
        }
        return new PictureFile(Contour.rectangle(0, 0, layout.getLengthMm(), layout.getWidthMm()), parts);
    }

    /** @throws punchwright.planner.convert.InputException when the shape of a part cannot be read any more */
    static PictureFile of(KeptLayout layout, PartReader reader) {
        List<Shape> parts = new ArrayList<>();
        for (KeptPlacement p : layout.getPlacements()) {
            parts.add(reader.shape(p.getPart()).moved(Pose.at(p.getXMm(), p.getYMm(), p.getAngleDeg())));
        }
        return new PictureFile(Contour.rectangle(0, 0, layout.getStock().getLengthMm(), layout.getStock().getWidthMm()), parts);
    }

    /**
     * Writes the file whole or not at all; one of the same name is replaced.
     *
     * @param words make the name; a character that a file system may refuse becomes "_"
     */
    Path write(Form form, Path folder, String... words) throws IOException {
        String name = String.join("-", words).replaceAll("[^A-Za-z0-9._-]", "_") + "." + form.name().toLowerCase(Locale.ROOT);
        Path target = folder.resolve(name);
        Path beside = folder.resolve("." + name + ".tmp");
        try {
            Files.createDirectories(folder);
            Files.writeString(beside, text(form), StandardCharsets.US_ASCII);
            return Files.move(beside, target, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            beside.toFile().delete(); // where it cannot be, the first failure is the one to tell
            throw new IOException("The drawing " + target + " cannot be written (" + e.getClass().getSimpleName() + ": "
                    + e.getMessage() + "). Name another folder with --to, or free space there.", e);
        }
    }

    private String text(Form form) throws IOException {
        StringWriter out = new StringWriter();
        if (form == Form.SVG) {
            SvgWriter.write(sheet, parts, out);
        } else {
            Map<String, List<Contour>> layers = new LinkedHashMap<>();
            layers.put(SHEET_LAYER, sheet == null ? List.of() : List.of(sheet));
            List<Contour> edges = new ArrayList<>();
            parts.forEach(p -> {
                edges.add(p.outer());
                edges.addAll(p.holes());
            });
            layers.put(DxfWriter.CUT_LAYER, edges);
            layers.values().removeIf(List::isEmpty);
            DxfWriter.writeLayers(layers, out);
        }
        return out.toString();
    }
}
