// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;

/** A record that was asked for is not in the workspace. */
public final class NotFoundException extends IOException {

    private static final long serialVersionUID = 1L;

    NotFoundException(String kind, String typed, String known) {
        super("There is no " + kind + " '" + typed + "' in the workspace. "
                + (known.isEmpty() ? "It has none yet." : "It has: " + known + "."));
    }
}
