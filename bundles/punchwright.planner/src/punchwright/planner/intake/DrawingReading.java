// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.PartCounting;
import punchwright.engine.drawing.PartGroup;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.planner.convert.PartPick;

/**
 * What one reading of a drawing gave.
 *
 * @param drawing  what the drawing shows, also without a part; null where the file is no drawing
 * @param parts    distinct parts; empty when it is refused
 * @param findings all that was noticed, the reason of a refusal first
 * @param refusal  why it gives no part; null when it gives one
 */
public record DrawingReading(DrawingResult drawing, List<FoundPart> parts, List<Finding> findings, Finding refusal) {

    public DrawingReading {
        parts = List.copyOf(parts);
        findings = List.copyOf(findings);
    }

    /** Reads a drawing; never fails, but says why it gives no part. */
    public static DrawingReading of(Path file, DrawingOptions options) {
        DrawingResult drawing = null;
        try {
            drawing = DrawingReader.survey(file, options);
            if (drawing.shapes().isEmpty()) {
                DrawingReader.read(file, options);
            }
            return new DrawingReading(drawing, parts(drawing), drawing.findings(), null);
        } catch (DrawingException e) {
            Set<Finding> all = new LinkedHashSet<>(List.of(e.finding()));
            all.addAll(e.others());
            if (drawing != null) {
                all.addAll(drawing.findings());
            }
            return new DrawingReading(drawing, List.of(), List.copyOf(all), e.finding());
        }
    }

    private static List<FoundPart> parts(DrawingResult drawing) {
        List<FoundPart> parts = new ArrayList<>();
        for (PartGroup group : PartCounting.groups(drawing.shapes())) {
            Bounds box = group.shape().bounds();
            parts.add(new FoundPart(parts.size() + 1, PartPick.inside(group.shape()), group.count(), (int) group.mirrored(),
                    box.width(),
                    box.height(), group.shape().areaMm2(), group.shape().holes().size()));
        }
        return parts;
    }

    public boolean isRefused() {
        return refusal != null;
    }
}
