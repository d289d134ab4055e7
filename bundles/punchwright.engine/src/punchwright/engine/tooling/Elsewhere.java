// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;

/**
 * What else the shop has, asked only for the nearest way out of a refusal. A shop has at least the job's own machine and
 * material; where nothing is told, nobody wants to know ways out and none is looked for, which saves
 * the time in searches over many jobs.
 *
 * @param machines   machines in use, the job's own may be among them
 * @param materials  materials kept, the job's own may be among them
 */
public record Elsewhere(List<Machine> machines, List<Material> materials) {

    public static final Elsewhere NOTHING = new Elsewhere(List.of(), List.of());

    public Elsewhere {
        machines = List.copyOf(machines);
        materials = List.copyOf(materials);
    }

    /** Whether ways out are wanted. */
    boolean asked() {
        return !machines.isEmpty() || !materials.isEmpty();
    }
}
