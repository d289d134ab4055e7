// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.drawing.dxf.DrawnNote;
import punchwright.engine.drawing.dxf.Scaling;
import punchwright.engine.geometry.Point;

/** Texts and centre marks in mm. */
final class NotePlacing {

    private final List<DrawnText> texts = new ArrayList<>();
    private final List<CentreMark> centreMarks = new ArrayList<>();

    NotePlacing(List<DrawnNote> notes, LayerSorting layers, Scaling scaling) {
        for (DrawnNote note : notes) {
            if (layers.isRead(note)) {
                place(note, layers.styles().of(note.style()), scaling);
            }
        }
    }

    private void place(DrawnNote note, SeenStyle style, Scaling scaling) {
        Point at = scaling.point(note.x(), note.y());
        if (note.isPoint()) {
            centreMarks.add(new CentreMark(at, style.layer(), style.meaning()));
        } else if (!note.text().isEmpty()) {
            texts.add(new DrawnText(at, note.text(), note.heightUnits() * scaling.mmPerUnit(), note.angleDeg(), style.layer(),
                    style.meaning()));
        }
    }

    List<DrawnText> texts() {
        return texts;
    }

    List<CentreMark> centreMarks() {
        return centreMarks;
    }
}
