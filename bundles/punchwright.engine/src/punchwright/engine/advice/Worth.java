// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

/** An addition worked out: what it saves, where, and what it makes possible. */
record Worth(Addition addition, Saving saving, List<PartSaving> parts, List<MadePossible> possible) {
}
