// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.Objects;
import java.util.stream.Collectors;

import punchwright.model.files.Workspace;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;

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

    static Machine machine(Workspace workspace, String typed) throws IOException {
        for (Machine m : workspace.library().getMachines()) {
            if (typed.equals(m.getId()) || typed.equals(m.getName())) {
                return m;
            }
        }
        throw new NotFoundException("machine", typed, workspace.library().getMachines().stream().map(Machine::getId)
                .filter(Objects::nonNull).collect(Collectors.joining(", ")));
    }
}
