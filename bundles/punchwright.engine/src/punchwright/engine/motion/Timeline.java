// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import java.util.List;
import java.util.Map;

/**
 * The run of one sheet, event by event.
 *
 * @param events          in order, without gaps
 * @param secondsByCause  sums by cause in the order of {@link Cause}
 * @param totalS          end of the last event
 * @param boundS          lower bound on the total for the same hits
 */
public record Timeline(List<Event> events, Map<Cause, Double> secondsByCause, double totalS, double boundS) {

    public Timeline {
        events = List.copyOf(events);
    }
}
