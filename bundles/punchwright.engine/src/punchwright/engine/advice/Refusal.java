// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.finding.Finding;

/** Why a part of an order ({@code part} its number in the order), or all parts of its sheet together, cannot be made. */
record Refusal(int part, boolean together, Finding why) {
}
