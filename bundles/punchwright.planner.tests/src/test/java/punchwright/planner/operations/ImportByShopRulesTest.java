// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.planning.Progress;
import punchwright.model.files.Workspace;
import punchwright.model.shop.LayerMeaning;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.ShopFactory;

/** Drawings are read by the layer rules of the workspace, where there is one. Counts by hand. */
class ImportByShopRulesTest {

    @TempDir
    Path folder;

    private long partsIn(Path workspace, Path drawing) throws IOException {
        Outcome outcome = new Operations(null, "test").named("import").orElseThrow()
                .run(new Call(workspace, List.of(drawing.toString()), Map.of(), Progress.SILENT));
        return outcome.lines().stream().filter(l -> l.strip().startsWith("part ")).count();
    }

    @Test
    void theRulesOfTheWorkspaceDecide() throws IOException {
        Path drawing = Files.writeString(folder.resolve("d.dxf"),
                "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
                + "0\nCIRCLE\n8\nA\n10\n0\n20\n0\n40\n30\n0\nCIRCLE\n8\nB\n10\n100\n20\n0\n40\n20\n0\nENDSEC\n0\nEOF\n");
        Path shop = folder.resolve("shop");
        try (Workspace workspace = Workspace.create(shop, "Shop", "EUR")) {
            LayerRule rule = ShopFactory.eINSTANCE.createLayerRule();
            rule.setId("b");
            rule.setName("B");
            rule.getLayerPatterns().add("B");
            rule.setMeaning(LayerMeaning.IGNORE);
            workspace.library().getLayerRules().add(rule);
            workspace.saveAll();
        }
        assertEquals(1, partsIn(shop, drawing));
        assertEquals(2, partsIn(folder, drawing));
    }
}
