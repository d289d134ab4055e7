// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import punchwright.engine.drawing.contour.ContourReason;
import punchwright.engine.drawing.dxf.DxfException;
import punchwright.engine.drawing.dxf.DxfFile;
import punchwright.engine.drawing.dxf.DxfReason;
import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.FindingCollector;

/** Reads a DXF drawing: the entry of the package. */
public final class DrawingReader {

    /** Findings of one kind that are kept; more are counted. */
    private static final int MOST_PER_REASON = 20;

    private DrawingReader() {
    }

    /**
     * Reads a drawing that must give at least one part.
     *
     * @throws DrawingException when it gives none; the finding names the file, the place and the way out
     */
    public static DrawingResult read(Path file, DrawingOptions options) throws DrawingException {
        return demandPart(survey(file, options));
    }

    /** The same from a stream, which the caller closes; {@code name} stands for the file in the findings. */
    public static DrawingResult read(InputStream in, String name, DrawingOptions options) throws DrawingException {
        return demandPart(survey(in, name, options));
    }

    /**
     * Reads a drawing and gives what there is, also when nothing closes.
     *
     * @throws DrawingException when the file cannot be read as a drawing at all
     */
    public static DrawingResult survey(Path file, DrawingOptions options) throws DrawingException {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw new DrawingException(Finding.of(DrawingReason.FILE_IS_FOLDER, name));
        }
        try (InputStream in = Files.newInputStream(file)) {
            return survey(in, name, options);
        } catch (NoSuchFileException missing) {
            throw new DrawingException(Finding.of(DrawingReason.FILE_MISSING, name));
        } catch (IOException failed) {
            throw new DrawingException(Finding.of(DrawingReason.FILE_UNREADABLE, name, reasonOf(failed)));
        }
    }

    /** The same from a stream, which the caller closes. */
    public static DrawingResult survey(InputStream in, String name, DrawingOptions options) throws DrawingException {
        FindingCollector findings = new FindingCollector(name, MOST_PER_REASON);
        try {
            RawDrawing raw = DxfFile.read(in, options.mostCurves(), findings);
            return new DrawingInterpreter(raw, options, findings).result();
        } catch (DxfException refused) {
            throw new DrawingException(refused.finding(), findings.findings());
        } catch (IOException failed) {
            throw new DrawingException(Finding.of(DrawingReason.FILE_UNREADABLE, name, reasonOf(failed)), findings.findings());
        } catch (OutOfMemoryError full) {
            throw new DrawingException(Finding.of(DrawingReason.TOO_LARGE, name));
        }
    }

    private static String reasonOf(IOException failed) {
        return failed.getMessage() == null ? failed.getClass().getSimpleName() : failed.getMessage();
    }

    private static DrawingResult demandPart(DrawingResult result) throws DrawingException {
        if (!result.shapes().isEmpty()) {
            return result;
        }
        Finding why = whyNoPart(result);
        List<Finding> others = new ArrayList<>(result.findings());
        others.remove(why);
        throw new DrawingException(why, others);
    }

    private static Finding whyNoPart(DrawingResult result) {
        List<Finding> bad = result.findings().stream().filter(f -> f.reason() == DxfReason.BAD_NUMBER).toList();
        if (!bad.isEmpty()) {
            List<Object> first = bad.get(0).arguments();
            return Finding.of(DrawingReason.NO_CONTOUR_BAD_NUMBERS, result.source(), bad.size(), first.get(0), first.get(1),
                    first.get(2));
        }
        for (Finding f : result.findings()) {
            if (f.reason() == DrawingReason.NO_CONTOUR_CUT || f.reason() == ContourReason.OPEN_OUTLINE) {
                return f;
            }
        }
        for (Finding f : result.findings()) {
            if (f.reason() == ContourReason.OPEN_CHAIN) {
                List<Object> a = f.arguments();
                return Finding.at(f.place(), DrawingReason.NO_CONTOUR_OPEN, result.source(), result.openChains().size(), a.get(0),
                        a.get(1), a.get(2));
            }
        }
        String found = result.entities().isEmpty() ? "no entity" : result.entities().entrySet().stream().limit(20)
                .map(e -> e.getKey() + " (" + e.getValue() + ")").collect(Collectors.joining(", "));
        return Finding.of(DrawingReason.NO_CONTOUR, result.source(), found);
    }
}
