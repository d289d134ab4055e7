// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Tool;
import punchwright.ui.session.Session;

/** Records of the shop that is open, as the pages of this package ask for them; nothing without a session. */
final class OpenShop {

    private OpenShop() {
    }

    /** Its currency, empty without a shop. */
    static String currency() {
        return library().map(Library::getCurrency).orElse("");
    }

    /** Its library. */
    static Optional<Library> library() {
        return Session.current().map(s -> s.workspace().library());
    }

    /** Its machines in use. */
    static List<Machine> machines() {
        return library().map(l -> l.getMachines().stream().filter(m -> m.getStatus() == ItemStatus.IN_USE).toList())
                .orElse(List.of());
    }

    /** The record of a tool of the engine. */
    static Optional<Tool> record(String id) {
        return library().flatMap(l -> l.getTools().stream().filter(t -> Objects.equals(t.getId(), id)).findFirst());
    }

    /** The record of a tool by its name. */
    static Optional<Tool> named(String name) {
        return library().flatMap(l -> l.getTools().stream().filter(t -> Objects.equals(t.getName(), name)).findFirst());
    }
}
