// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

/**
 * Boxes to pack, one entry a piece, lengths in any integer unit.
 *
 * @param lengths lengths of a box along x, one for each turn it may take
 * @param widths  the widths along y that go with them
 */
public record BoxSet(int[][] lengths, int[][] widths) {

    public int size() {
        return lengths.length;
    }

    public int turns(int box) {
        return lengths[box].length;
    }

    public long area(int box) {
        return (long) lengths[box][0] * widths[box][0];
    }

    /** Boxes of fixed orientation, or that may also be turned by 90 degrees. */
    public static BoxSet of(int[] length, int[] width, boolean turn) {
        int[][] lengths = new int[length.length][];
        int[][] widths = new int[length.length][];
        for (int i = 0; i < length.length; i++) {
            boolean two = turn && length[i] != width[i];
            lengths[i] = two ? new int[] {length[i], width[i]} : new int[] {length[i]};
            widths[i] = two ? new int[] {width[i], length[i]} : new int[] {width[i]};
        }
        return new BoxSet(lengths, widths);
    }
}
