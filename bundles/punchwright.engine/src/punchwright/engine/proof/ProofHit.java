// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import punchwright.engine.tooling.Tool;

/** One hit as the floor runs it: sheet position in mm, tool angle in degrees, tool, holding index. */
public record ProofHit(int id, double xMm, double yMm, double angleDeg, Tool tool, int holding) {
}
