// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.press.DieClearance;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolSize;

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
    void add(ToolSize d, BookPart part, Machine machine) {
        if (d.lengthMm() < 0.5 || d.widthMm() < 0.5 || !fits(d, machine)) {
            return;
        }
        all.computeIfAbsent(d.id(), k -> new Draft(d)).wanted(part.demand().name(), d.shape().forms() ? 0
                : DieClearance.totalMm(part.demand().material(), part.demand().thicknessMm()));
    }

    static boolean fits(ToolSize d, Machine machine) {
        double diameter = d.diameterMm();
        return machine.places().stream().anyMatch(p -> diameter <= p.maxToolDiameterMm() + 1e-6);
    }

    List<Addition> additions() {
        List<Addition> list = new ArrayList<>();
        for (Draft d : all.values()) {
            Tool plain = d.size().make(d.clearances(), job.tools(), 0);
            Price price = given(plain.id(), plain.name(), prices.tool(plain, Math.max(1, d.clearances().size())));
            list.add(new Addition(AdditionKind.TOOL, plain.id(), plain.name(), d.size().make(d.clearances(), job.tools(), price
                    .value()), null, null, price, d.why()));
        }
        return list;
    }

    private Price given(String id, String name, Price otherwise) {
        return Additions.given(job, id, name, otherwise);
    }
}
