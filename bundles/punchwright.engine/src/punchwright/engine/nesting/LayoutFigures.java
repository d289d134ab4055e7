// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Remnants, utilisation, cost and bound of layouts that are there already, as a person arranges them. Nothing is checked: whether
 * they are right is for {@code check.LayoutCheck} to say.
 */
public final class LayoutFigures {

    private LayoutFigures() {
    }

    /**
     * The figures; the bounds are those of the job, whatever part of it the layouts make.
     *
     * @param job     its parts name every part of the layouts
     * @param layouts as arranged
     * @throws IllegalArgumentException as {@link Nester#nest(NestingJob)}
     */
    public static Nesting of(NestingJob job, List<Layout> layouts) {
        JobCheck.check(Objects.requireNonNull(job, "job"));
        Stock stock = new Stock(job, new ArrayList<>());
        List<BoxPart> parts = job.parts().stream().map(BoxPart::of).toList();
        LowerBounds bounds = LowerBounds.of(stock, parts);
        return new Assembly(job, stock, parts).measured(layouts, bounds.mm2(), bounds.cost(), List.of());
    }
}
