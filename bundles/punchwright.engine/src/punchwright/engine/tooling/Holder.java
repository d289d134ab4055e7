// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/**
 * A multi-tool holder: takes several small inserts and sits in the head as one tool.
 *
 * @param id                    stable id
 * @param name                  what the shop calls it
 * @param inserts               number of inserts
 * @param maxInsertDiameterMm   largest circumscribed diameter of an insert
 * @param forceLimitN           largest punching force of an insert
 * @param insertsTurn           whether the inserts can be turned to any angle
 * @param outerDiameterMm       what the place must take
 * @param onHand                number owned
 */
public record Holder(String id, String name, int inserts, double maxInsertDiameterMm, double forceLimitN,
        boolean insertsTurn, double outerDiameterMm, int onHand) {
}
