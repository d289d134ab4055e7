// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.FindingCollector;

/** Entry of the package: a stream of bytes to the curves of the model space. */
public final class DxfFile {

    private static final int SNIFF = 32;

    private DxfFile() {
    }

    /**
     * Reads a whole file; the caller closes the stream.
     *
     * @param in         bytes of a DXF file, text or binary form
     * @param mostCurves limit for the curves after unfolding the blocks, above 0
     * @param findings   takes what was repaired or left out
     * @throws DxfException when the bytes are no DXF or the limit is passed; its finding says which
     * @throws IOException  when the stream fails
     */
    public static RawDrawing read(InputStream in, long mostCurves, FindingCollector findings) throws IOException {
        BufferedInputStream buffered = new BufferedInputStream(in, 1 << 16);
        TagSource tags = open(buffered, findings);
        DxfContent content = new DxfParser(tags, findings).parse();
        List<DrawnCurve> curves = content.modelSpace.curves;
        List<DrawnNote> notes = content.modelSpace.notes;
        if (!content.modelSpace.inserts.isEmpty()) {
            BlockExplosion explosion = new BlockExplosion(content.blocks, mostCurves, findings);
            explosion.explode(content.modelSpace);
            curves = explosion.curves();
            notes = explosion.notes();
        }
        return new RawDrawing(content.acadVersion, content.unitCode, content.measurement, content.entities, content.layers,
                curves, notes);
    }

    private static TagSource open(BufferedInputStream in, FindingCollector findings) throws IOException {
        in.mark(SNIFF);
        byte[] head = in.readNBytes(SNIFF);
        in.reset();
        if (head.length == 0) {
            throw new DxfException(Finding.of(DxfReason.EMPTY, findings.subject()));
        }
        byte[] signature = BinaryTags.SIGNATURE;
        if (startsWith(head, signature)) {
            in.skipNBytes(signature.length);
            return new BinaryTags(in, head.length > signature.length + 1 && head[signature.length + 1] == 0);
        }
        boolean bom = startsWith(head, new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF});
        if (bom) {
            in.skipNBytes(3);
        }
        return new AsciiTags(in);
    }

    private static boolean startsWith(byte[] head, byte[] start) {
        return head.length >= start.length && Arrays.equals(head, 0, start.length, start, 0, start.length);
    }
}
