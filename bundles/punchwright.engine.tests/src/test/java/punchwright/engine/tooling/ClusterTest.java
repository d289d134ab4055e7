// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.MaterialGroup;

/** Cluster tools over patterns; the union of hits by an independent geometry library. */
class ClusterTest {

    private static Tool cluster() {
        List<Point> punches = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                punches.add(new Point(10 * i - 15, 10 * j - 15));
            }
        }
        return new Tool("CL", "cluster 4 x 4 of 5", ToolShape.CLUSTER, 5, 5, 0, AngleFreedom.QUARTER, 0, List.of(0.3),
                ShearKind.FLAT, 0, 480, 8, 14, Map.of(MaterialGroup.MILD_STEEL, 50_000), 0, 1, 0, punches, null);
    }

    private static FeatureSet grid(int columns, int rows) {
        Parts p = Parts.plate(30 + 10 * columns, 30 + 10 * rows);
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                p.round(20 + 10 * i, 20 + 10 * j, 5);
            }
        }
        return p.build("G");
    }

    private static OperationList choose(FeatureSet features) {
        List<Tool> tools = new ArrayList<>(Shop.tools());
        tools.add(cluster());
        OperationList list = ToolChoice.choose(Shop.job(features, 1.5, tools));
        CutCheck c = CutCheck.of(features.shape(), list, ToolingRules.USUAL.scallopMm());
        assertTrue(list.complete(), list.findings().toString());
        assertTrue(c.deepestMm() <= 0.01, c.toString());
        assertTrue(c.uncutMm() <= c.jointsMm() + 0.05, c.toString());
        return list;
    }

    private static int hits(OperationList list, String tool) {
        return list.operations().stream().filter(o -> o.tool().id().equals(tool)).mapToInt(o -> o.hits().size()).sum();
    }

    /** 22 x 13 holes: 5 x 3 clusters of 16, and 286 - 240 = 46 single holes. */
    @Test
    void clusterTilesTheGridAndSinglesMakeTheRest() {
        OperationList list = choose(grid(22, 13));
        assertEquals(15, hits(list, "CL"));
        assertEquals(46, hits(list, "R5.0"));
    }

    /** Too few holes are not worth the tool change: nine singles. */
    @Test
    void smallGridsAreMadeOneByOne() {
        OperationList list = choose(grid(3, 3));
        assertEquals(0, hits(list, "CL"));
        assertEquals(9, hits(list, "R5.0"));
    }
}
