// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import punchwright.engine.nesting.boxes.FreeSpace;
import punchwright.engine.nesting.boxes.Work;

/** Parts of one sheet placed anew around those that stay. Boxes in free rectangles, under many orders and fit rules. */
final class Around {

    private record Attempt(List<BoxPlacement> boxes, int reach) {

        boolean betterThan(Attempt other) {
            return other == null || boxes.size() > other.boxes.size()
                    || boxes.size() == other.boxes.size() && reach < other.reach;
        }
    }

    private final NestingJob job;
    private final Layout layout;
    private final Set<Integer> locked;
    private final Work work;
    private final Region region;
    private final List<BoxPart> parts = new ArrayList<>();
    private final BoxFiller filler;

    Around(NestingJob job, Layout layout, Set<Integer> locked, Work work) {
        this.job = job;
        this.layout = layout;
        this.locked = locked;
        this.work = work;
        this.region = Region.of(layout.sheet(), job);
        job.parts().forEach(p -> parts.add(BoxPart.of(p)));
        this.filler = new BoxFiller(parts, work);
    }

    Layout layout() {
        List<Placement> out = new ArrayList<>();
        int[] wanted = new int[parts.size()];
        for (int i = 0; i < layout.placements().size(); i++) {
            Placement p = layout.placements().get(i);
            if (locked.contains(i)) {
                out.add(p);
            } else {
                wanted[number(p.partId())]++;
            }
        }
        for (BoxPlacement b : best(wanted, List.copyOf(out)).boxes) {
            Spot spot = Spot.of(b, parts.get(b.part()), region);
            out.add(new Placement(parts.get(b.part()).part().id(), spot.pose()));
        }
        return new Layout(layout.sheet(), out, layout.runs());
    }

    private int number(String id) {
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).part().id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("layout: part " + id + " is not among the parts of the job; remove it or add it");
    }

    private Attempt best(int[] wanted, List<Placement> fixed) {
        SplittableRandom random = new SplittableRandom(job.search().seed());
        int[] order = IntStream.range(0, parts.size()).boxed()
                .sorted(Comparator.comparingLong((Integer p) -> -parts.get(p).boxArea())).mapToInt(Integer::intValue).toArray();
        Attempt best = null;
        int rounds = 0;
        while (best == null || rounds < 200 && !work.spent()) {
            FitRule rule = FitRule.values()[rounds % FitRule.values().length];
            List<BoxPlacement> boxes = filler.fill(free(fixed), region.row(), wanted, order, rule);
            int reach = boxes.stream().mapToInt(b -> b.x() + parts.get(b.part()).turns().get(b.turn()).length()).max().orElse(0);
            Attempt attempt = new Attempt(boxes, reach);
            best = attempt.betterThan(best) ? attempt : best;
            rounds++;
            if (rounds % FitRule.values().length == 0) {
                swap(order, random);
            }
        }
        return best;
    }

    private static void swap(int[] order, SplittableRandom random) {
        int a = random.nextInt(order.length);
        int b = random.nextInt(order.length);
        int keep = order[a];
        order[a] = order[b];
        order[b] = keep;
    }

    /** Free rectangles of the region beside the boxes of what stays. */
    private FreeSpace free(List<Placement> fixed) {
        int web = filler.web();
        FreeSpace free = new FreeSpace().reset(region.length() + web, region.width() + web);
        for (Placement p : fixed) {
            BoxPart part = parts.get(number(p.partId()));
            Turn turn = Turn.of(part.part().shape(), p.pose().angleDeg());
            double x = p.pose().x() + turn.minX() - region.xMm();
            double y = p.pose().y() + turn.minY() - region.yMm();
            int fromX = (int) Math.floor(x * Ticks.PER_MM) - web;
            int fromY = (int) Math.floor(y * Ticks.PER_MM) - web;
            free.use(fromX, region.row() ? 0 : fromY, turn.length() + 2 * web + 1,
                    region.row() ? region.width() + web : turn.width() + 2 * web + 1);
        }
        return free;
    }
}
