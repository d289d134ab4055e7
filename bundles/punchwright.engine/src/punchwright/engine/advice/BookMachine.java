// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.press.Machine;

/**
 * A machine with what an hour on it costs.
 *
 * @param machine     press
 * @param ratePerHour machine hour with the operator's share, currency an hour, above 0
 */
public record BookMachine(Machine machine, double ratePerHour) {

    public BookMachine {
        if (!(ratePerHour > 0)) {
            throw new IllegalArgumentException(machine.name() + ": the rate is " + ratePerHour + " an hour; it must be above 0");
        }
    }
}
