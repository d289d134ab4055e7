// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.files.Workspace;
import punchwright.model.plan.CostItem;
import punchwright.model.plan.Hit;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.SheetJob;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.WorkFactory;
import punchwright.planner.demo.DemoFolder;

/** A plan as it is kept, from a small order of the demo shop: the same again for the same inputs, and whole in itself. */
class PlanRepeatTest {

    @TempDir
    private Path shop;

    @BeforeEach
    void copy() {
        DemoFolder.copyTo(shop);
    }

    private static Order order(Workspace workspace, int quantity) {
        return order(workspace, "bracket-104", quantity);
    }

    private static Order order(Workspace workspace, String part, int quantity) {
        Order order = WorkFactory.eINSTANCE.createOrder();
        order.setId("T-1");
        order.setNumber("T-1");
        OrderLine line = WorkFactory.eINSTANCE.createOrderLine();
        line.setId("T-1-10");
        line.setItem(workspace.item(part).orElseThrow());
        line.setQuantity(quantity);
        order.getLines().add(line);
        return order;
    }

    private static Machine machine(Workspace workspace, String id) {
        return workspace.library().getMachines().stream().filter(m -> m.getId().equals(id)).findFirst().orElseThrow();
    }

    private static Plan plan(Workspace workspace, Order order, Progress progress) {
        return new OrderPlanning(workspace.library(), workspace.paths(), "test").plan(order, machine(workspace, "P1"), progress);
    }

    private byte[] kept() throws Exception {
        try (Workspace workspace = Workspace.open(shop)) {
            Order order = order(workspace, 12);
            workspace.put(order);
            workspace.save(order);
            Plan plan = plan(workspace, order, Progress.SILENT);
            workspace.put(plan);
            workspace.save(plan);
            return Files.readAllBytes(workspace.fileOf(plan));
        }
    }

    @Test
    void theSameInputsGiveTheSameBytes() throws Exception {
        assertArrayEquals(kept(), kept());
    }

    /** Eight plates stand in two rows that share their cuts; the crossings of these cuts leave no loose sliver. */
    @Test
    void theDigestFollowsTheInputsAndCrossingsLeaveNoSliver() throws Exception {
        try (Workspace workspace = Workspace.open(shop)) {
            Order order = order(workspace, "mounting-plate-115", 8);
            Plan plan = plan(workspace, order, Progress.SILENT);
            assertEquals(PlanStatus.PROVEN, plan.getStatus());
            assertTrue(plan.getFindings().stream().noneMatch(f -> f.getCode().equals("PROOF-SLIVER")),
                    plan.getFindings().toString());
            String before = plan.getInputsDigest();
            workspace.library().getRates().setLabourPerHour(workspace.library().getRates().getLabourPerHour() + 1);
            String after = plan(workspace, order, Progress.SILENT).getInputsDigest();
            assertTrue(before.matches("[0-9a-f]{64}"), before);
            assertNotEquals(before, after);
        }
    }

    @Test
    void aPlanIsWholeInItself() throws Exception {
        try (Workspace workspace = Workspace.open(shop)) {
            Plan plan = plan(workspace, order(workspace, 12), Progress.SILENT);

            assertEquals(PlanStatus.PROVEN, plan.getStatus());
            assertEquals(3, plan.getLibraryRevision());
            assertEquals("test", plan.getProgramVersion());
            int placed = 0;
            double seconds = 0;
            for (SheetJob job : plan.getJobs()) {
                seconds += job.getSetUp().stream().mapToDouble(t -> t.getSeconds()).sum();
                for (Layout layout : job.getLayouts()) {
                    placed += layout.getRunCount() * layout.getPlacements().size();
                    seconds += layout.getRunCount() * layout.getCycleTimeS();
                    assertEquals(layout.getCycleTimeS(), layout.getTimes().stream().mapToDouble(t -> t.getSeconds()).sum(), 1e-6);
                    assertTrue(layout.getBoundTimeS() > 0 && layout.getBoundTimeS() <= layout.getCycleTimeS() + 1e-9);
                    layout.getHits().forEach(PlanRepeatTest::assertWhole);
                }
            }
            double ownS = plan.getJobs().get(0).getOperations().stream().mapToDouble(o -> o.getTimeSPerPart()).sum() * placed;
            double strokesS = plan.getJobs().get(0).getLayouts().stream().mapToDouble(PlanRepeatTest::strokesS).sum();
            assertEquals(strokesS, ownS, 1e-6);
            assertEquals(12, placed);
            assertEquals(plan.getTotalTimeS(), seconds, 1e-6);
            assertTrue(!plan.getChecks().isEmpty());
        }
    }

    /** Moves, settling, strokes, nibbling and turning of all runs: what operations are made of. */
    private static double strokesS(Layout layout) {
        return layout.getRunCount() * layout.getTimes().stream().filter(t -> switch (t.getCause()) {
            case MOVE, SETTLE, STROKE, NIBBLE, TURN_TOOL -> true;
            default -> false;
        }).mapToDouble(t -> t.getSeconds()).sum();
    }

    private static void assertWhole(Hit hit) {
        assertTrue(hit.getToolUse() != null && hit.getHolding() != null && hit.getOperation() != null
                && hit.getPlacement() != null, hit.toString());
    }

    @Test
    void theCostKindsOfALotAddUpToItsTotalAndEveryFormulaKnowsItsInputs() throws Exception {
        try (Workspace workspace = Workspace.open(shop)) {
            Plan plan = plan(workspace, order(workspace, 12), Progress.SILENT);
            CostItem root = plan.getCosts().get(0).getRoot();
            assertEquals(root.getValue(), root.getChildren().stream().mapToDouble(CostItem::getValue).sum(), 1e-9);
            assertTrue(plan.getTotalCost() > 0);
            Map<String, CostItem> before = new HashMap<>();
            for (CostItem item : plan.getFigures()) {
                item.getInputs().forEach(name -> assertTrue(before.containsKey(name), item.getKey() + " uses " + name));
                before.put(item.getKey(), item);
            }
        }
    }

    @Test
    void cancellingStopsAtOnceAndKeepsNothing() throws Exception {
        try (Workspace workspace = Workspace.open(shop)) {
            Progress cancelled = new Progress() {
                @Override
                public void at(String step, double share) {
                    // nobody listens
                }

                @Override
                public boolean cancelled() {
                    return true;
                }
            };
            assertThrows(CancelledException.class,
                    () -> plan(workspace, order(workspace, 12), cancelled));
        }
        assertTrue(Files.notExists(shop.resolve("plans")));
    }
}
