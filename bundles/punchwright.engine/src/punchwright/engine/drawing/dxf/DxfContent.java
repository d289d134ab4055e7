// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/** What the parser has gathered so far. */
final class DxfContent {

    String acadVersion = "";
    int unitCode;
    int measurement = -1;
    final Map<String, Integer> entities = new TreeMap<>();
    final Map<String, Layer> layers = new LinkedHashMap<>();
    /** By name in upper case. */
    final Map<String, Block> blocks = new LinkedHashMap<>();
    final Block modelSpace = new Block("", Vec3.ZERO);
    int paperEntities;
}
