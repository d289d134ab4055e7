// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.List;
import java.util.Map;

/**
 * What stands in a DXF file, with the blocks exploded, in drawing units.
 *
 * @param acadVersion   value of $ACADVER, empty where missing
 * @param unitCode      value of $INSUNITS, 0 where missing
 * @param measurement   value of $MEASUREMENT (0 inch based, 1 metric), -1 where missing
 * @param entities      entities of the model space by type
 * @param layers        layer table by name
 * @param curves        all curves of the model space
 * @param notes         texts and centre marks of the model space
 */
public record RawDrawing(String acadVersion, int unitCode, int measurement, Map<String, Integer> entities,
        Map<String, Layer> layers, List<DrawnCurve> curves, List<DrawnNote> notes) {
}
