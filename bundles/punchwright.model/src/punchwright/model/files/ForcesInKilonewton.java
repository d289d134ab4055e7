// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Format 0 to 1: forces were kept in tonne-force ({@code pressForceT}, {@code forceLimitT}); they are kept in kN now.
 *
 * <p>1 tonne-force = 9.80665 kN exactly, from the standard acceleration of free fall 9.80665 m/s2 (3rd CGPM, 1901).</p>
 */
final class ForcesInKilonewton implements Migration {

    private static final double KN_PER_TONNE_FORCE = 9.80665;
    private static final Map<String, String> RENAMED = new LinkedHashMap<>();

    static {
        RENAMED.put("pressForceT", "pressForceKn");
        RENAMED.put("forceLimitT", "forceLimitKn");
    }

    @Override
    public int from() {
        return 0;
    }

    @Override
    public List<String> apply(Document document) {
        List<String> notes = new ArrayList<>();
        NodeList elements = document.getElementsByTagName("*");
        for (Map.Entry<String, String> name : RENAMED.entrySet()) {
            int changed = 0;
            for (int i = 0; i < elements.getLength(); i++) {
                Element element = (Element) elements.item(i);
                if (element.hasAttribute(name.getKey())) {
                    double tonnes = Double.parseDouble(element.getAttribute(name.getKey()));
                    element.setAttribute(name.getValue(), Double.toString(tonnes * KN_PER_TONNE_FORCE));
                    element.removeAttribute(name.getKey());
                    changed++;
                }
            }
            if (changed > 0) {
                notes.add(changed + " x " + name.getKey() + " [t] to " + name.getValue() + " [kN]");
            }
        }
        return notes;
    }
}
