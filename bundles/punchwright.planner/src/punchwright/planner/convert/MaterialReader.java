// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;

/** Material records for the engine. */
public final class MaterialReader {

    private MaterialReader() {
    }

    public static Material read(punchwright.model.shop.Material m) {
        return new Material(m.getId(), m.getGrade(), MaterialGroup.valueOf(m.getGroup().getName()), m.getDensityKgPerDm3(),
                m.getTensileMinMPa(), m.getTensileMaxMPa(), m.getShearStrengthMPa(),
                ClearanceRule.valueOf(m.getClearanceRule().getName()), m.getClearanceTotalPercent(), m.getLifeFactor(),
                m.getMinimumHoleFactor());
    }
}
