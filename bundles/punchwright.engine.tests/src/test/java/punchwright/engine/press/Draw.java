// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Random;
import java.util.function.Consumer;

/** Seeded random inputs for sweeps. */
final class Draw {

    private final Random random;

    private Draw(long seed) {
        random = new Random(seed);
    }

    /** Runs a check on many draws, the same ones each time. */
    static void many(long seed, int times, Consumer<Draw> check) {
        Draw draw = new Draw(seed);
        for (int i = 0; i < times; i++) {
            check.accept(draw);
        }
    }

    double between(double least, double largest) {
        return least + random.nextDouble() * (largest - least);
    }

    int whole(int least, int largest) {
        return random.nextInt(least, largest + 1);
    }

    <T> T of(T[] values) {
        return values[random.nextInt(values.length)];
    }
}
