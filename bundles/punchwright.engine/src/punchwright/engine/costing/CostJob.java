// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * All that the cost of one order on one machine depends on.
 *
 * @param title    what the calculation is called, as "Order 2041 on press P1"
 * @param currency ISO 4217 code of all money values
 * @param locale   language of labels and sources (English, German)
 * @param code     letters and digits that set names of this machine's cells apart from those of another one for the same order;
 *                 empty when there is only one. Rates, prices, stock and tools carry no code: they are the same on all machines
 * @param machine  inputs of the machine-hour rate
 * @param rates    labour, set-up, surcharges
 * @param works    one for each material and thickness
 * @param parts    the parts made from them
 * @param lines    the order's lines
 */
public record CostJob(String title, String currency, Locale locale, String code, MachineRateInputs machine, ShopRates rates,
        List<SheetWork> works, List<CostPart> parts, List<CostLine> lines) {

    public CostJob {
        Objects.requireNonNull(locale, "locale");
        works = List.copyOf(works);
        parts = List.copyOf(parts);
        lines = List.copyOf(lines);
    }
}
