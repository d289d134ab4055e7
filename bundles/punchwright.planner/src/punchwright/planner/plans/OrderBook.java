// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Stream;

import punchwright.engine.advice.AdviceJob;
import punchwright.engine.advice.AdviceOptions;
import punchwright.engine.advice.AdviceReason;
import punchwright.engine.advice.BookMachine;
import punchwright.engine.advice.BookOrder;
import punchwright.engine.finding.Finding;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.PlanningRules;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.MachineReader;
import punchwright.planner.convert.OrderReader;
import punchwright.planner.convert.PartReader;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.planner.convert.ToolReader;

/** The orders of a workspace as the order book of the purchase advice. */
public final class OrderBook {

    private static final double DAYS_PER_YEAR = 365;
    /** A shorter span says nothing about a year. Common practice, no source. */
    private static final double LEAST_DAYS = 30;

    private final Library library;
    private final DrawingStore drawings;
    private final PartReader parts;
    private final List<Finding> findings = new ArrayList<>();

    public OrderBook(Library library, WorkspacePaths paths) {
        this.library = library;
        drawings = new DrawingStore(paths, ShopLayerRules.of(library));
        parts = new PartReader(drawings);
    }

    /**
     * The job with what was noticed.
     *
     * @param job      input of {@code Advisor.advise}
     * @param findings in the order of the input
     */
    public record Reading(AdviceJob job, List<Finding> findings) {

        public Reading {
            findings = List.copyOf(findings);
        }
    }

    /**
     * Reads the orders, machines, tools and holders. What cannot be read is left out with a finding.
     *
     * @param orders       the order book
     * @param machines     machines looked at
     * @param timesPerYear how often a year each order is made; 0 takes it from the span of the orders' dates
     * @param options      how to look
     */
    public Reading read(List<Order> orders, List<Machine> machines, double timesPerYear, AdviceOptions options) {
        double times = timesPerYear > 0 ? timesPerYear : bySpan(orders);
        if (timesPerYear > 0) {
            findings.add(Finding.of(AdviceReason.PER_YEAR, "order book", timesPerYear));
        }
        List<BookOrder> book = orders.stream().map(o -> order(o, times)).filter(o -> !o.demands().isEmpty()).toList();
        List<BookMachine> presses = machines.stream().map(m -> new BookMachine(MachineReader.read(m),
                MachineRates.perHour(library, m,
                findings))).toList();
        List<AdviceJob.HolderPrice> prices = library.getHolders().stream().map(h -> new AdviceJob.HolderPrice(h.getId(),
                h.getPrice()))
                .toList();
        double setUp = library.getRates() == null ? 0 : library.getRates().getSetUpPerHour();
        double minutes = library.getRates() == null ? 0 : library.getRates().getSetUpMinutesPerTool();
        AdviceJob job = new AdviceJob(book, presses, LibraryTools.read(library, drawings, findings),
                ToolReader.usableHolders(library
                .getHolders()), prices, setUp, minutes, PlanningRules.USUAL.tooling(), options);
        return new Reading(job, findings);
    }

    private BookOrder order(Order order, double times) {
        List<PartDemand> demands = new ArrayList<>();
        String number = order.getNumber() == null ? order.getId() : order.getNumber();
        try {
            OrderReader.pieces(order).forEach((part, pieces) -> {
                try {
                    demands.add(parts.demand(part, pieces));
                } catch (InputException e) {
                    leftOut("order " + number, e);
                }
            });
        } catch (InputException e) {
            leftOut("order " + number, e);
        }
        return new BookOrder(number, times, demands);
    }

    private void leftOut(String subject, InputException e) {
        findings.add(Finding.of(AdviceReason.LEFT_OUT, subject, e.finding().subject() + ": " + e.finding().message()));
    }

    /** 365 days over the days from the first date received to the last date due, at least 30; 1 without dates. */
    private double bySpan(List<Order> orders) {
        TreeSet<LocalDate> dates = new TreeSet<>();
        orders.forEach(o -> Stream.of(o.getReceived(), o.getDueDate()).map(OrderBook::date).filter(Objects::nonNull)
                .forEach(dates::add));
        if (dates.isEmpty()) {
            findings.add(Finding.of(AdviceReason.PER_YEAR, "order book", 1.0));
            return 1;
        }
        double days = ChronoUnit.DAYS.between(dates.first(), dates.last());
        double times = DAYS_PER_YEAR / Math.max(LEAST_DAYS, days);
        findings.add(Finding.of(AdviceReason.SPAN, "order book", days, times));
        return times;
    }

    private static LocalDate date(String text) {
        try {
            return text == null || text.isBlank() ? null : LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            return null;
        }
    }
}
