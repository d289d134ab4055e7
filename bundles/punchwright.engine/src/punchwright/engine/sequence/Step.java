// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

/**
 * What lies between the end of one hit and the end of the next in the same holding; all times in s.
 *
 * @param change     kind of tool change made first
 * @param changeS    its time
 * @param moveS      move of both axes from rest to rest; 0 when nibbling
 * @param turnS      time by which turning the tool outlasts the move; 0 when nibbling
 * @param settleS    rest before the stroke; 0 when nibbling
 * @param strokeS    ram down and up, or the whole nibbling period
 * @param nibbling   whether the ram keeps running, so that move, turn and stroke are one period
 */
public record Step(ChangeKind change, double changeS, double moveS, double turnS, double settleS, double strokeS,
        boolean nibbling) {

    /** Sum of all parts in s. */
    public double totalS() {
        return changeS + moveS + turnS + settleS + strokeS;
    }
}
