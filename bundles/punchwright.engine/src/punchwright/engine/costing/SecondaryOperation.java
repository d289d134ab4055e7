// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * Work after punching at a full rate (its overheads are in the rate).
 *
 * @param rateId          stable id of the rate
 * @param label           what a person reads, as "bend"
 * @param perHour         money per hour
 * @param setUpMinutes    set-up of the lot, min
 * @param minutesPerPiece time of a piece, min
 */
public record SecondaryOperation(String rateId, String label, double perHour, double setUpMinutes, double minutesPerPiece) {
}
