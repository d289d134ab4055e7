// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.tooling.Elsewhere;
import punchwright.engine.tooling.Tool;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Library;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.MachineReader;
import punchwright.planner.convert.MaterialReader;
import punchwright.planner.convert.ToolReader;

/** The tools of the library that can be used now, and what else the shop has. */
final class LibraryTools {

    private LibraryTools() {
    }

    /** In the order of the library; a record that cannot be read is left out with a finding. */
    static List<Tool> read(Library library, DrawingStore drawings, List<Finding> input) {
        ToolReader reader = new ToolReader(drawings);
        List<Tool> tools = new ArrayList<>();
        for (punchwright.model.shop.Tool t : library.getTools()) {
            try {
                if (ToolReader.usable(t.getStatus(), t.getOnHand())) {
                    tools.add(reader.read(t));
                }
            } catch (InputException e) {
                input.add(new Finding(PlansReason.TOOL_LEFT_OUT, t.getName(), List.of(t.getName(), e.getMessage()), null));
            }
        }
        return tools;
    }

    /** Machines in use and all materials, for the nearest way out of a refusal. */
    static Elsewhere elsewhere(Library library) {
        return new Elsewhere(
                library.getMachines().stream().filter(m -> m.getStatus() == ItemStatus.IN_USE && m.getClamps() != null)
                        .map(MachineReader::read).toList(),
                library.getMaterials().stream().map(MaterialReader::read).toList());
    }
}
