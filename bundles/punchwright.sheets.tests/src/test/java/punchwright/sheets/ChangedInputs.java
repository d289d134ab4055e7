// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.util.LinkedHashMap;
import java.util.Map;

/** Twenty inputs of the sample order with other values, by the name of their cells. */
final class ChangedInputs {

    private ChangedInputs() {
    }

    static Map<String, Double> twenty() {
        Map<String, Double> c = new LinkedHashMap<>();
        c.put("TR30_H_purchase", 512_000.0);
        c.put("TR30_H_replacement", 610_000.0);
        c.put("TR30_H_life", 6.0);
        c.put("TR30_H_occupancy", 71.0);
        c.put("TR30_H_interest_rate", 4.4);
        c.put("TR30_H_energy_price", 0.41);
        c.put("TR30_H_attendance", 35.0);
        c.put("R_labour", 44.2);
        c.put("R_programmer", 61.0);
        c.put("R_set_up_base", 17.0);
        c.put("R_set_up_per_tool", 3.25);
        c.put("R_first_piece", 9.0);
        c.put("R_scrap_rate", 4.0);
        c.put("R_material_overhead", 9.5);
        c.put("R_production_overhead", 80.0);
        c.put("R_admin_overhead", 7.7);
        c.put("R_profit", 12.5);
        c.put("Mat_dc01_scrap_value", 0.33);
        c.put("S_st_2500_price", 77.35);
        c.put("T_OB_30_price", 333.0);
        return c;
    }
}
