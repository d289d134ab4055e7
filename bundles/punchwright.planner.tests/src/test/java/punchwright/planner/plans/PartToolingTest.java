// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.planning.Progress;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.model.files.Workspace;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Tool;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.model.work.Part;
import punchwright.model.work.ToolWish;
import punchwright.model.work.WishKind;
import punchwright.model.work.WorkFactory;
import punchwright.planner.demo.DemoFolder;

/** Tools weighed for one part of the demo shop: wishes of the part change the choice, and only that. */
class PartToolingTest {

    @TempDir
    private Path shop;
    private Workspace workspace;
    private Part part;
    private Machine machine;

    @BeforeEach
    void open() throws Exception {
        DemoFolder.copyTo(shop);
        workspace = Workspace.open(shop);
        part = (Part) workspace.item("bracket-104").orElseThrow();
        machine = workspace.library().getMachines().get(0);
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private PartWeighing weigh() {
        return new PartTooling(workspace.library(), workspace.paths()).weigh(part, machine, null, Progress.SILENT);
    }

    private void wish(WishKind kind, String toolId, Feature feature) {
        ToolWish wish = WorkFactory.eINSTANCE.createToolWish();
        wish.setKind(kind);
        wish.setTool(workspace.library().getTools().stream().filter(t -> t.getId().equals(toolId)).findFirst().orElseThrow());
        if (feature != null) {
            wish.setFeatureKind(feature.kind().name());
            wish.setXMm(feature.center().x());
            wish.setYMm(feature.center().y());
        }
        part.getWishes().add(wish);
    }

    private static boolean uses(ToolWeighing weighing, String toolId) {
        return weighing.operations().operations().stream().anyMatch(op -> op.tool().id().equals(toolId));
    }

    private static Alternative chosen(FeatureWays ways) {
        return ways.alternatives().stream().filter(Alternative::chosen).findFirst().orElseThrow();
    }

    @Test
    void withoutWishesBothChoicesAreOneAndEveryToolHasAPlace() {
        PartWeighing w = weigh();
        assertSame(w.free(), w.wished());
        assertTrue(w.free().operations().complete(), () -> w.findings().toString());
        long tools = w.wished().operations().operations().stream().map(op -> op.tool().id()).distinct().count();
        assertTrue(tools > 0);
        assertTrue(w.loading().uses().stream().map(u -> u.tool().id()).distinct().count() == tools, () -> w.loading().toString());
    }

    @Test
    void aForbiddenToolIsNotUsedAndSaysSo() {
        String tool = weigh().free().operations().operations().get(0).tool().id();
        wish(WishKind.FORBID, tool, null);
        PartWeighing w = weigh();
        assertTrue(uses(w.free(), tool));
        assertFalse(uses(w.wished(), tool));
        String name = workspace.library().getTools().stream().filter(t -> t.getId().equals(tool)).map(Tool::getName).findFirst()
                .orElseThrow();
        assertTrue(w.wished().ways().stream().flatMap(f -> f.passedOver().stream())
                .anyMatch(f -> f.code().equals("TOOLING-FORBIDDEN") && f.subject().equals(name)));
    }

    @Test
    void whatNothingMakesHasItsReasonAndItsNearestWayOut() {
        workspace.library().getTools().forEach(t -> wish(WishKind.FORBID, t.getId(), null));
        PartWeighing w = weigh();
        assertFalse(w.wished().ways().isEmpty());
        for (FeatureWays ways : w.wished().ways()) {
            List<Finding> reasons = w.reasons(ways);
            assertEquals(1, reasons.size(), reasons.toString());
            assertTrue(reasons.get(0).waysOut().stream().anyMatch(WayOut::found), reasons.get(0).remedy());
        }
        part.getWishes().clear();
        PartWeighing free = weigh();
        assertTrue(free.wished().ways().stream().allMatch(ways -> free.reasons(ways).isEmpty()));
    }

    @Test
    void aPinnedToolMakesItsFeatureAndTheChoiceIsNoCheaper() {
        FeatureWays ways = weigh().free().ways().stream().filter(w -> w.features().size() == 1 && w.alternatives().size() > 1)
                .findFirst().orElseThrow();
        String chosen = chosen(ways).tools().get(0).id();
        Alternative other = ways.alternatives().stream()
                .filter(a -> a.tools().stream().noneMatch(t -> t.id().equals(chosen))).findFirst().orElseThrow();
        Feature feature = ways.features().get(0);
        wish(WishKind.PIN, other.tools().get(0).id(), feature);
        PartWeighing w = weigh();
        FeatureWays now = w.wished().ways().stream().filter(f -> f.features().contains(feature)).findFirst().orElseThrow();
        assertTrue(chosen(now).tools().stream().anyMatch(t -> t.id().equals(other.tools().get(0).id())));
        assertTrue(w.wished().boundSeconds() <= w.wished().costSeconds() + 1e-9);
        assertTrue(w.wished().costSeconds() >= w.free().boundSeconds() - 1e-9, "a wish only takes choices away");
    }

    @Test
    void theFreeChoiceIsTakenOverOnlyWhileNothingButWishesChanges() {
        PartTooling tooling = new PartTooling(workspace.library(), workspace.paths());
        PartWeighing first = tooling.weigh(part, machine, null, Progress.SILENT);
        wish(WishKind.FORBID, first.free().operations().operations().get(0).tool().id(), null);
        assertSame(first.free(), tooling.weigh(part, machine, first, Progress.SILENT).free());
        part.setThicknessMm(part.getThicknessMm() + 0.5);
        assertNotSame(first.free(), tooling.weigh(part, machine, first, Progress.SILENT).free());
    }

    @Test
    void aPlanKeepsToTheWishes() {
        String tool = weigh().free().operations().operations().get(0).tool().id();
        wish(WishKind.FORBID, tool, null);
        Order order = WorkFactory.eINSTANCE.createOrder();
        order.setId("T-1");
        order.setNumber("T-1");
        OrderLine line = WorkFactory.eINSTANCE.createOrderLine();
        line.setId("T-1-10");
        line.setItem(part);
        line.setQuantity(4);
        order.getLines().add(line);
        Plan plan = new OrderPlanning(workspace.library(), workspace.paths(), "test").plan(order, machine, Progress.SILENT);
        List<String> used = plan.getJobs().stream().flatMap(j -> j.getToolUses().stream()).map(u -> u.getTool().getId()).toList();
        assertFalse(used.isEmpty(), () -> plan.getFindings().toString());
        assertFalse(used.contains(tool), used::toString);
    }

    @Test
    void aPinWithoutItsFeatureIsAWarning() {
        String tool = workspace.library().getTools().get(0).getId();
        Feature there = weigh().features().features().get(0);
        wish(WishKind.PIN, tool, there);
        part.getWishes().get(0).setXMm(there.center().x() + 5000);
        List<String> codes = weigh().findings().stream().map(f -> f.code()).toList();
        assertEquals(1, codes.stream().filter("PLANNING-PIN-LOST"::equals).count(), codes::toString);
    }
}
