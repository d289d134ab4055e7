// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import punchwright.engine.finding.FindingCollector;

/** Where entity handlers put what they made: the model space or a block, with what could not be made. */
final class EntityTarget {

    private static final Set<String> INEXACT = Set.of("ELLIPSE", "SPLINE");
    private static final Set<String> FILLED = Set.of("SOLID", "TRACE");

    private final FindingCollector findings;
    private final Map<String, Integer> degenerate = new TreeMap<>();
    private final PolylineAssembly polyline = new PolylineAssembly();
    private final Map<Style, Style> styles = new HashMap<>();
    private final Set<String> replaced = new HashSet<>();
    private Block block;
    private Style lastStyle = new Style("0", Style.BY_LAYER, "BYLAYER", false);
    private String lastRawType = "BYLAYER";

    EntityTarget(FindingCollector findings) {
        this.findings = findings;
    }

    void open(Block newBlock) {
        block = newBlock;
    }

    Block block() {
        return block;
    }

    PolylineAssembly polyline() {
        return polyline;
    }

    FindingCollector findings() {
        return findings;
    }

    /**
     * Adds the curves of an entity; an empty list counts as an entity without extent. Lines without length still count on their
     * layer.
     */
    void add(Entity e, List<RawCurve> curves, boolean closed) {
        add(e.type(), style(e), curves, closed, e.place());
    }

    void add(String type, Style style, List<RawCurve> curves, boolean closed, long place) {
        if (curves.isEmpty()) {
            degenerate(type);
        }
        if (!curves.isEmpty() || type.equals("LINE")) {
            block.curves.add(new DrawnCurve(style, curves, closed, place, !INEXACT.contains(type), FILLED.contains(type)));
        }
    }

    void degenerate(String type) {
        degenerate.merge(type, 1, Integer::sum);
    }

    Map<String, Integer> degenerate() {
        return degenerate;
    }

    Style style(Entity e) {
        String layer = e.text(8, "0");
        int colour = e.integer(62, Style.BY_LAYER);
        String type = e.text(6, "BYLAYER");
        boolean hidden = e.integer(60, 0) == 1;
        if (!layer.equals(lastStyle.layer()) || colour != lastStyle.colour() || hidden != lastStyle.hidden()
                || !type.equals(lastRawType)) {
            Style style = new Style(layer, colour, type.equals("BYLAYER") ? type : type.toUpperCase(Locale.ROOT), hidden);
            lastStyle = styles.computeIfAbsent(style, s -> s);
            lastRawType = type;
            if (layer.indexOf('\uFFFD') >= 0 && replaced.add(layer)) {
                findings.add(DxfReason.TEXT_REPLACED, layer);
            }
        }
        return lastStyle;
    }
}
