// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.Objects;
import java.util.stream.Collectors;

import punchwright.model.files.Workspace;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.Place;
import punchwright.model.shop.Tool;
import punchwright.model.work.Order;
import punchwright.model.work.Part;

/** Finds records by what a person types: number, id or name. */
final class Finder {

    private Finder() {
    }

    static Order order(Workspace workspace, String typed) throws IOException {
        for (Order o : workspace.orders()) {
            if (typed.equals(o.getNumber()) || typed.equals(o.getId())) {
                return o;
            }
        }
        throw new NotFoundException("order", typed,
                workspace.orders().stream().map(Order::getNumber).filter(Objects::nonNull).collect(Collectors.joining(", ")));
    }

    static Part part(Workspace workspace, String typed) throws IOException {
        for (Part p : workspace.parts()) {
            if (typed.equals(p.getNumber()) || typed.equals(p.getId()) || typed.equals(p.getName())) {
                return p;
            }
        }
        throw new NotFoundException("part", typed, workspace.parts().stream().map(Part::getNumber).filter(Objects::nonNull)
                .collect(Collectors.joining(", ")));
    }

    static Tool tool(Workspace workspace, String typed) throws IOException {
        for (Tool t : workspace.library().getTools()) {
            if (typed.equals(t.getId()) || typed.equals(t.getName())) {
                return t;
            }
        }
        throw new NotFoundException("tool", typed, workspace.library().getTools().stream().map(Tool::getId)
                .filter(Objects::nonNull).collect(Collectors.joining(", ")));
    }

    static Machine machine(Workspace workspace, String typed) throws IOException {
        for (Machine m : workspace.library().getMachines()) {
            if (typed.equals(m.getId()) || typed.equals(m.getName())) {
                return m;
            }
        }
        throw new NotFoundException("machine", typed, workspace.library().getMachines().stream().map(Machine::getId)
                .filter(Objects::nonNull).collect(Collectors.joining(", ")));
    }

    static Material material(Workspace workspace, String typed) throws IOException {
        for (Material m : workspace.library().getMaterials()) {
            if (typed.equals(m.getId()) || typed.equals(m.getName()) || typed.equals(m.getGrade())) {
                return m;
            }
        }
        throw new NotFoundException("material", typed, workspace.library().getMaterials().stream().map(Material::getId)
                .filter(Objects::nonNull).collect(Collectors.joining(", ")));
    }

    /** Force limit in N of a place by id or name, of the press without one. */
    static double forceLimitN(Machine machine, String place) throws IOException {
        if (place == null) {
            return 1000 * machine.getPressForceKn();
        }
        for (Place p : machine.getPlaces()) {
            if (place.equals(p.getId()) || place.equals(p.getName())) {
                return 1000 * (p.getForceLimitKn() > 0 ? p.getForceLimitKn() : machine.getPressForceKn());
            }
        }
        throw new NotFoundException("place", place, machine.getPlaces().stream().map(Place::getId).filter(Objects::nonNull)
                .collect(Collectors.joining(", ")));
    }
}
