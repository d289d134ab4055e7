// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.demo;

import static punchwright.planner.demo.Outline.doubleFlat;
import static punchwright.planner.demo.Outline.hexagon;
import static punchwright.planner.demo.Outline.obround;
import static punchwright.planner.demo.Outline.obroundUp;
import static punchwright.planner.demo.Outline.rectangle;
import static punchwright.planner.demo.Outline.round;
import static punchwright.planner.demo.Outline.singleFlat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.drawing.DxfWriter;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Shape;

/**
 * Draws the parts of the demo shop. Run {@code main} with the folder {@code demo-workspace/drawings} to write them anew;
 * a test holds the committed drawings to be what this program writes.
 */
public final class DemoDrawings {

    private DemoDrawings() {
    }

    /** Writes every drawing into the folder given. */
    public static void main(String[] args) throws IOException {
        for (Map.Entry<String, Shape> e : all().entrySet()) {
            DxfWriter.write(List.of(e.getValue()), Path.of(args[0], e.getKey() + ".dxf"));
        }
    }

    /** Shapes by file name without ending. */
    static Map<String, Shape> all() {
        Map<String, Shape> all = new LinkedHashMap<>();
        all.put("bracket-104", bracket());
        all.put("front-panel-220", frontPanel());
        all.put("mounting-plate-115", mountingPlate());
        all.put("cover-400", cover());
        all.put("gusset-150", gusset());
        all.put("door-330", door());
        all.put("rack-panel-019", rackPanel());
        all.put("clip-060", clip());
        return all;
    }

    private static Shape bracket() {
        Contour outer = new Outline().to(0, 0).to(160, 0).to(160, 110).to(150, 120).to(10, 120).to(0, 110).close();
        return new Shape(outer, List.of(round(18, 18, 6.6), round(142, 18, 6.6), obround(40, 95, 16, 6.6),
                obround(120, 95, 16, 6.6), rectangle(80, 55, 40, 25)));
    }

    private static Shape frontPanel() {
        List<Contour> holes = new ArrayList<>();
        for (double x : new double[] { 12, 468 }) {
            holes.add(obroundUp(x, 40, 12, 7));
            holes.add(obroundUp(x, 226, 12, 7));
        }
        holes.add(round(105, 165, 72));
        holes.add(rectangle(245, 180, 92, 45));
        holes.add(rectangle(375, 180, 92, 45));
        for (int i = 0; i < 6; i++) {
            holes.add(doubleFlat(70 + 50 * i, 75, 22.5, 20.2));
            holes.add(round(70 + 50 * i, 110, 5));
        }
        holes.add(singleFlat(410, 75, 16.2, 14.8));
        return new Shape(rectangle(240, 133, 480, 266, 5), holes);
    }

    private static Shape mountingPlate() {
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            for (int j = 0; j < 5; j++) {
                if (i < 2 || i > 4 || j < 1 || j > 3) {
                    holes.add(round(60 + 80 * i, 50 + 100 * j, 7));
                }
            }
        }
        holes.add(rectangle(300, 250, 200, 120, 10));
        for (double x : new double[] { 25, 575 }) {
            for (double y : new double[] { 25, 475 }) {
                holes.add(rectangle(x, y, 10, 10));
            }
        }
        return new Shape(rectangle(300, 250, 600, 500), holes);
    }

    private static Shape cover() {
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < 44; i++) {
            holes.add(obroundUp(165 + 54 * i, 150, 40, 6));
        }
        for (int i = 0; i < 11; i++) {
            holes.add(round(25 + 260 * i, 14, 5.5));
            holes.add(round(25 + 260 * i, 226, 5.5));
        }
        Contour outer = new Outline().to(0, 20).to(20, 20).to(20, 0).to(2630, 0).to(2630, 20).to(2650, 20).to(2650, 220)
                .to(2630, 220).to(2630, 240).to(20, 240).to(20, 220).to(0, 220).close();
        return new Shape(outer, holes.stream().filter(h -> h.bounds().minX() > 25 || h.bounds().minY() > 25).toList());
    }

    private static Shape gusset() {
        Contour outer = new Outline().to(0, 0).to(180, 0).to(180, 40).to(40, 180).to(0, 180).close();
        return new Shape(outer, List.of(round(25, 25, 13.5), round(145, 25, 13.5), round(25, 145, 13.5), round(65, 65, 30)));
    }

    private static Shape door() {
        List<Contour> holes = new ArrayList<>();
        holes.add(round(660, 225, 22.5));
        holes.add(rectangle(660, 300, 15, 5));
        for (int i = 0; i < 3; i++) {
            holes.add(round(30, 75 + 150 * i, 4.5));
            holes.add(round(45, 75 + 150 * i, 4.5));
        }
        for (double x : new double[] { 150, 450 }) {
            holes.add(round(x, 30, 4.2));
            holes.add(round(x, 420, 4.2));
        }
        return new Shape(rectangle(350, 225, 700, 450), holes);
    }

    private static Shape rackPanel() {
        List<Contour> holes = new ArrayList<>();
        for (double x : new double[] { 8.75, 473.85 }) {
            holes.add(obround(x, 37.7, 10.3, 6.8));
            holes.add(obround(x, 94.85, 10.3, 6.8));
        }
        holes.add(rectangle(95, 66, 90, 50, 5));
        holes.add(round(195, 66, 32));
        holes.add(round(245, 66, 32));
        for (int i = 0; i < 3; i++) {
            holes.add(rectangle(310 + 55 * i, 88, 30, 5));
            holes.add(hexagon(310 + 55 * i, 45, 13));
        }
        return new Shape(rectangle(241.3, 66.275, 482.6, 132.55), holes);
    }

    private static Shape clip() {
        Contour outer = new Outline().to(0, 0).to(70, 0).to(70, 20).to(40, 20).to(40, 45).to(0, 45).close();
        return new Shape(outer, List.of(round(12, 12, 5.5), round(55, 10, 4.2), rectangle(20, 32, 20, 3)));
    }
}
