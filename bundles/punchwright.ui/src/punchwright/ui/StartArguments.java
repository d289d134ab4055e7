// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import punchwright.ui.session.Recent;

/** Which workspace opens first: the one the command line names with {@code --workspace FOLDER}, else the last one, else none. */
final class StartArguments {

    private static final String WORKSPACE = "--workspace";

    private StartArguments() {
    }

    static Optional<Path> workspace(String[] arguments) {
        for (int k = 0; k + 1 < arguments.length; k++) {
            if (WORKSPACE.equals(arguments[k])) {
                return Optional.of(Path.of(arguments[k + 1]).toAbsolutePath().normalize());
            }
        }
        for (String argument : arguments) {
            if (argument.startsWith(WORKSPACE + "=")) {
                return Optional.of(Path.of(argument.substring(WORKSPACE.length() + 1)).toAbsolutePath().normalize());
            }
        }
        return Recent.folders().stream().filter(Files::isDirectory).findFirst();
    }
}
