// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import java.util.ArrayList;
import java.util.List;

/** Puts events one behind the other; each starts where the one before it ends. Events of no duration are left out. */
final class Clock {

    private final List<Event> events = new ArrayList<>();
    private double nowS;

    void add(Cause cause, double durationS, int hitId) {
        if (durationS > 0) {
            events.add(new Event(nowS, durationS, cause, hitId));
            nowS += durationS;
        }
    }

    double nowS() {
        return nowS;
    }

    List<Event> events() {
        return events;
    }
}
