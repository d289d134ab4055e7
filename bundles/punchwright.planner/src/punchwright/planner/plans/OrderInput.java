// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.planning.KeptSheet;
import punchwright.engine.planning.OptionalPieces;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.PlanRequest;
import punchwright.engine.planning.PlanningRules;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.Rates;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.Want;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.KeptReader;
import punchwright.planner.convert.MachineReader;
import punchwright.planner.convert.OrderReader;
import punchwright.planner.convert.PartReader;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.planner.convert.ShopOrderRules;
import punchwright.planner.convert.StockReader;
import punchwright.planner.convert.ToolReader;

/** Reads an order on a machine as the engine wants it; planning and layouts share it. */
public final class OrderInput {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double MINUTES_PER_HOUR = 60;

    private final Library library;
    private final DrawingStore drawings;

    public OrderInput(Library library, WorkspacePaths paths) {
        this.library = library;
        this.drawings = new DrawingStore(paths, ShopLayerRules.of(library));
    }

    /**
     * What was read.
     *
     * @param request  input of the planner
     * @param parts    parts of the order that could be read, by id
     * @param findings what was noticed; with an error among them the request is not whole
     */
    public record Reading(PlanRequest request, Map<String, Part> parts, List<Finding> findings) {

        /** Whether something could not be read. */
        public boolean failed() {
            return findings.stream().anyMatch(Finding::isError);
        }
    }

    /** Reads the order; {@code withKept} says whether layouts that the engineer arranged are used. */
    public Reading read(Order order, Machine machine, boolean withKept) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Part> parts = new LinkedHashMap<>();
        List<PartDemand> demands = demands(order, parts, findings);
        double ratePerHour = MachineRates.perHour(library, machine, new ArrayList<>());
        List<KeptSheet> kept = withKept ? KeptReader.read(order, machine) : List.of();
        PlanRequest request = new PlanRequest(order.getNumber(), MachineReader.read(machine),
                LibraryTools.read(library, drawings, findings), ToolReader.usableHolders(library.getHolders()), demands,
                StockReader.read(library.getStock(), m -> costs(m, machine, ratePerHour)),
                PlanningRules.USUAL.with(ShopOrderRules.of(library)),
                MachineReader.readiness(machine, library.getRates()), LibraryTools.elsewhere(library), kept);
        return new Reading(request, parts, findings);
    }

    private List<PartDemand> demands(Order order, Map<String, Part> parts, List<Finding> findings) {
        List<PartDemand> demands = new ArrayList<>();
        PartReader reader = new PartReader(drawings);
        try {
            OrderReader.wanted(order).forEach((part, pieces) -> {
                try {
                    parts.put(part.getId(), part);
                    demands.add(reader.demand(part, 1).pieces(pieces.getOrDefault(Want.MUST, 0), optional(pieces)));
                    findings.addAll(reader.findings(part));
                } catch (InputException e) {
                    findings.add(e.finding());
                }
            });
        } catch (InputException e) {
            findings.add(e.finding());
        }
        return demands;
    }

    private static List<OptionalPieces> optional(Map<Want, Integer> pieces) {
        List<OptionalPieces> optional = new ArrayList<>();
        pieces.forEach((want, quantity) -> {
            if (want != Want.MUST) {
                optional.add(new OptionalPieces(punchwright.engine.nesting.Want.valueOf(want.getName()), quantity));
            }
        });
        return optional;
    }

    /** A sheet is loaded and unloaded on the machine's time and fetched on a person's. The contours' time is left aside. */
    private NestingCosts costs(Material material, Machine machine, double ratePerHour) {
        Rates r = library.getRates();
        double seconds = machine.getLoadTimeS() + machine.getUnloadTimeS();
        double handling = ratePerHour * seconds / SECONDS_PER_HOUR
                + (r == null ? 0 : r.getLabourPerHour() * r.getSheetHandlingMinutes() / MINUTES_PER_HOUR);
        return r == null ? new NestingCosts(material.getScrapValuePerKg(), 0, NestingCosts.SHEETS_ONLY.keepLengthMm(),
                NestingCosts.SHEETS_ONLY.keepWidthMm(), handling, 0)
                : new NestingCosts(material.getScrapValuePerKg(), r.getRemnantValuePercent() / 100, r.getRemnantLeastLengthMm(),
                r.getRemnantLeastWidthMm(), handling, 0);
    }
}
