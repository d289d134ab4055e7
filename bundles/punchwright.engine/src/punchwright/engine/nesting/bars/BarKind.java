// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

/**
 * One way to use one kind of bar. A bar whose rest is kept is a kind of its own, shorter and cheaper, that draws on the same
 * stock.
 *
 * @param capacity    usable length, the web after the last part included
 * @param lengths     length of each part with its web; 0 where it does not fit across
 * @param cost        of one bar
 * @param costPerUnit added for each unit of length used, 0 or more
 * @param stock       number of the stock that it draws on
 */
public record BarKind(int capacity, int[] lengths, double cost, double costPerUnit, int stock) {

    boolean takes(int part) {
        return lengths[part] > 0 && lengths[part] <= capacity;
    }

    long used(int[] counts) {
        long used = 0;
        for (int j = 0; j < counts.length; j++) {
            used += (long) counts[j] * lengths[j];
        }
        return used;
    }
}
