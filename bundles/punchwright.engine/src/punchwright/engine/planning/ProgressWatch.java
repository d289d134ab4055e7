// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.Locale;

import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.Watch;

/** Lets the layout stage tell the best so far to who waits for a plan, and stop when that person cancels. */
final class ProgressWatch implements Watch {

    private final Progress progress;

    ProgressWatch(Progress progress) {
        this.progress = progress;
    }

    @Override
    public void best(Nesting best, double share) {
        int sheets = best.layouts().stream().mapToInt(l -> l.runs()).sum();
        progress.best(String.format(Locale.ROOT, "%d sheets, %.1f %% used", sheets, 100 * best.utilisation()), share);
    }

    @Override
    public boolean cancelled() {
        return progress.cancelled();
    }
}
