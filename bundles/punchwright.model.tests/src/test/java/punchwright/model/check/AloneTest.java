// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import punchwright.model.Samples;
import punchwright.model.shop.Library;

/** Checking piece by piece finds what checking the whole finds. */
class AloneTest {

    @Test
    void piecesTogetherGiveTheWhole() {
        Library library = Samples.library();
        library.getTools().get(0).setLengthMm(-1);
        library.getMaterials().get(0).setDensityKgPerDm3(0);
        library.getTools().get(1).setId(library.getTools().get(0).getId());
        List<String> whole = texts(Checks.of(library));
        List<Violation> pieces = new ArrayList<>();
        for (Iterator<EObject> all = EcoreUtil.getAllContents(List.of(library)); all.hasNext();) {
            pieces.addAll(Checks.alone(all.next()));
        }
        assertFalse(whole.isEmpty());
        assertEquals(new TreeSet<>(whole), new TreeSet<>(texts(pieces)));
        assertEquals(whole.size(), pieces.size());
    }

    private static List<String> texts(List<Violation> violations) {
        return violations.stream().map(Violation::toString).toList();
    }
}
