// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

/** What a block or the model space holds. */
final class Block {

    final String name;
    final Vec3 base;
    final List<DrawnCurve> curves = new ArrayList<>();
    final List<BlockReference> inserts = new ArrayList<>();
    final List<DrawnNote> notes = new ArrayList<>();

    Block(String name, Vec3 base) {
        this.name = name;
        this.base = base;
    }
}
