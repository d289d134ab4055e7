// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Orders in which parts are placed and sheets are taken. */
final class ShapeOrders {

    private final Stock stock;
    private final List<BoxPart> parts;
    private final ShapeBook book;

    ShapeOrders(Stock stock, List<BoxPart> parts, ShapeBook book) {
        this.stock = stock;
        this.parts = parts;
        this.book = book;
    }

    /** Largest first, by several sizes. */
    List<int[]> fixed() {
        List<int[]> orders = new ArrayList<>();
        addNew(orders, by(p -> book.piece(p).area()));
        addNew(orders, by(p -> parts.get(p).boxArea()));
        addNew(orders, by(p -> parts.get(p).longSide()));
        addNew(orders, by(p -> parts.get(p).shortSide()));
        return orders;
    }

    /** Largest first by an area that is disturbed by a factor of up to e to the power of {@code spread} either way. */
    int[] disturbed(SplittableRandom random, double spread) {
        double[] key = new double[parts.size()];
        for (int p = 0; p < key.length; p++) {
            key[p] = book.piece(p).area() * Math.exp(spread * (random.nextDouble() + random.nextDouble() - 1));
        }
        return by(p -> key[p]);
    }

    private int[] by(ToDoubleFunction<Integer> size) {
        return IntStream.range(0, parts.size()).boxed().sorted(Comparator.comparingDouble((Integer p) -> -size.applyAsDouble(p)))
                .mapToInt(Integer::intValue).toArray();
    }

    /** Each offer once in front, the others by price for the room; remnants before all, and once only by their price. */
    List<int[]> offers() {
        List<Integer> byPrice = new ArrayList<>(IntStream.range(0, stock.size()).boxed().toList());
        byPrice.sort(Comparator.comparingDouble(i -> stock.offer(i).price() / stock.areaMm2(i)));
        List<int[]> orders = new ArrayList<>();
        for (int first : byPrice) {
            List<Integer> order = new ArrayList<>(byPrice);
            order.remove((Integer) first);
            order.add(0, first);
            List<Integer> remnantsFirst = new ArrayList<>(order);
            remnantsFirst.sort(Comparator.comparing(i -> !stock.offer(i).remnant()));
            addNew(orders, ints(remnantsFirst));
            addNew(orders, ints(order));
        }
        return orders;
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    private static void addNew(List<int[]> orders, int[] order) {
        if (orders.stream().noneMatch(o -> Arrays.equals(o, order))) {
            orders.add(order);
        }
    }
}
