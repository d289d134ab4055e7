// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** The workspaces that were opened lately, newest first. */
public final class Recent {

    private static final String KEY = "recentWorkspaces";
    private static final int KEPT = 8;

    private Recent() {
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode("punchwright.ui");
    }

    /** Folders that are still there. */
    public static List<Path> folders() {
        List<Path> folders = new ArrayList<>();
        for (String line : node().get(KEY, "").split("\n")) {
            if (!line.isBlank() && Files.isDirectory(Path.of(line))) {
                folders.add(Path.of(line));
            }
        }
        return folders;
    }

    /** Puts a folder at the head of the list. */
    public static void add(Path folder) {
        List<Path> folders = folders();
        folders.remove(folder);
        folders.add(0, folder);
        node().put(KEY, String.join("\n", folders.stream().limit(KEPT).map(Path::toString).toList()));
        try {
            node().flush();
        } catch (BackingStoreException e) {
            // The list of recent folders is a convenience; without it the person opens by the dialog.
        }
    }
}
