// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.nio.file.Path;

/** A second program for tests: opens a workspace for writing, says so, and waits to be ended. */
final class LockHolder {

    private LockHolder() {
    }

    public static void main(String[] args) throws Exception {
        Workspace workspace = Workspace.open(Path.of(args[0]));
        System.out.print('L');
        System.out.flush();
        Thread.sleep(60_000);
        workspace.close();
    }
}
