// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.press.DieClearance;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.tooling.Tool;

/** Tools that could be bought, each once, for the parts and machines that want them. */
final class Drafts {

    private final AdviceJob job;
    private final PriceBook prices;
    private final Map<String, Draft> all = new TreeMap<>();

    Drafts(AdviceJob job, PriceBook prices) {
        this.job = job;
        this.prices = prices;
    }

    /** Notes a tool for a part; one that no place of the machine takes is left out. */
    void add(Draft d, BookPart part, Machine machine) {
        if (d.lengthMm() < 0.5 || d.widthMm() < 0.5 || !fits(d, machine)) {
            return;
        }
        all.computeIfAbsent(d.id(), k -> d).wanted(part.demand().name(), d.shape().forms() ? 0
                : DieClearance.totalMm(part.demand().material(), part.demand().thicknessMm()));
    }

    static boolean fits(Draft d, Machine machine) {
        double diameter = Tools.diameterMm(d);
        return machine.places().stream().anyMatch(p -> diameter <= p.maxToolDiameterMm() + 1e-6);
    }

    /** Whether a place of the machine turns a tool of this diameter. */
    static boolean turns(Machine machine, double diameterMm) {
        return machine.places().stream().filter(Place::turns).anyMatch(p -> diameterMm <= p.maxToolDiameterMm() + 1e-6);
    }

    List<Addition> additions() {
        List<Addition> list = new ArrayList<>();
        for (Draft d : all.values()) {
            Tool plain = Tools.make(d, job.tools(), 0);
            Price price = given(d.id(), d.name(), prices.tool(plain, Math.max(1, d.clearances().size())));
            list.add(new Addition(AdditionKind.TOOL, d.id(), d.name(), Tools.make(d, job.tools(), price.value()), null, null,
                    price,
                    d.why()));
        }
        return list;
    }

    private Price given(String id, String name, Price otherwise) {
        return Additions.given(job, id, name, otherwise);
    }
}
