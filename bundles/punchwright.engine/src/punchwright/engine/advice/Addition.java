// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Tool;

/**
 * Something that could be bought.
 *
 * @param kind    what it is
 * @param id      stable id, made from its sizes, so that the same order book gives the same id
 * @param name    for people
 * @param tool    the tool as the library would keep it (TOOL, DIE, SECOND: with the same id it takes the place of the one owned)
 * @param holder  the holder (HOLDER; with the same id it takes the place of the one owned); else null
 * @param machine the machine with the option (OPTION); else null
 * @param price   what it costs
 * @param why     which features or parts of the order book it was made for
 */
public record Addition(AdditionKind kind, String id, String name, Tool tool, Holder holder, Machine machine, Price price,
        String why) {
}
