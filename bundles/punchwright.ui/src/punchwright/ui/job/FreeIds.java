// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.util.Locale;
import java.util.function.Predicate;

/** Identifiers that can be file names, from what people call things. */
public final class FreeIds {

    private FreeIds() {
    }

    /** An identifier like {@code wanted}, or like {@code otherwise} when nothing of it can stand, that is not taken. */
    public static String from(String wanted, String otherwise, Predicate<String> taken) {
        String stem = wanted.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9._-]+", "-").replaceFirst("^[^a-z0-9]+", "")
                .replaceFirst("[.-]+$", "");
        String id = stem.isEmpty() ? otherwise : stem;
        String free = id;
        for (int next = 2; taken.test(free); next++) {
            free = id + "-" + next;
        }
        return free;
    }
}
