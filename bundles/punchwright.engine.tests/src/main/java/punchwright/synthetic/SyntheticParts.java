// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.Pattern;

/** Draws parts with every kind of feature and pattern at random; the same seed and number give the same part. */
public final class SyntheticParts {

    private static final double CELL_MM = 44;
    private static final double REACH_MM = 17;
    private static final double FIELD_MM = 110;
    private static final double MARGIN_MM = 28;
    private static final int CELLS = 4;
    private static final double[] NOISE_MM = {0, 0.0001, 0.005, 0.005};
    /** Openings of one kind that are not of one pattern differ by this at least. */
    private static final double APART_MM = 0.1;

    private final Random random;
    private final long number;
    private final OpeningMaker maker;
    private final List<TrueOpening> openings = new ArrayList<>();
    private final List<TruePattern> patterns = new ArrayList<>();

    private SyntheticParts(long seed, long number) {
        random = new Random(mixed(mixed(seed) + number));
        this.number = number;
        maker = new OpeningMaker(random);
    }

    /** Spreads neighbouring numbers, whose first draws would be alike (S. Vigna, splitmix64, 2015). */
    private static long mixed(long x) {
        long z = x + 0x9E3779B97F4A7C15L;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }

    /** The part of a number in the series of a seed. */
    public static SyntheticPart part(long seed, long number) {
        return new SyntheticParts(seed, number).part();
    }

    private SyntheticPart part() {
        double noise = NOISE_MM[random.nextInt(NOISE_MM.length)];
        double length = 2 * MARGIN_MM + CELLS * CELL_MM + 2 * FIELD_MM;
        double width = 2 * MARGIN_MM + 2 * FIELD_MM;
        OutlineMaker outline = new OutlineMaker(random, length, width);
        addFields();
        addSingles();
        Place place = new Place(1000 * random.nextDouble() - 500, 1000 * random.nextDouble() - 500,
                random.nextInt(8) == 0 ? 90 * random.nextInt(4) : 360 * random.nextDouble());
        List<TrueOpening> there = new ArrayList<>(openings.stream().map(o -> o.moved(place)).toList());
        Collections.shuffle(there, random);
        DxfText text = new DxfText();
        ContourDrawer drawer = new ContourDrawer(random, text, noise);
        drawer.draw("OUTLINE", place.of(outline.edges()));
        there.forEach(o -> drawer.draw("HOLES", o.exact()));
        Collections.shuffle(text.entities(), random);
        return new SyntheticPart(number, text.text(), noise, there, outline.details().stream().map(d -> moved(d, place)).toList(),
                outline.edges().size(), patterns.stream().map(p -> moved(p, place)).toList());
    }

    private static TrueDetail moved(TrueDetail d, Place place) {
        return new TrueDetail(d.kind(), place.of(d.place()), d.lengthMm(), d.depthMm(), d.radiusMm());
    }

    private static TruePattern moved(TruePattern p, Place place) {
        return new TruePattern(p.kind(), p.centers().stream().map(place::of).toList(), p.pitchMm(), p.rowPitchMm(),
                p.columns(), p.rows());
    }

    private void addFields() {
        List<Pattern.Kind> kinds = new ArrayList<>(List.of(Pattern.Kind.values()));
        Collections.shuffle(kinds, random);
        for (int i = 0; i < kinds.size(); i++) {
            Place place = new Place(MARGIN_MM + CELLS * CELL_MM + (i % 2 + 0.5) * FIELD_MM,
                    MARGIN_MM + (i / 2 + 0.5) * FIELD_MM, 0);
            PatternMaker fields = new PatternMaker(random, maker);
            do {
                fields.make(kinds.get(i));
            } while (fields.openings().stream().anyMatch(this::isLikeAnother));
            fields.openings().forEach(o -> openings.add(o.moved(place)));
            patterns.add(moved(fields.pattern(), place));
        }
    }

    /** Every kind once and four more, in cells in any order. */
    private void addSingles() {
        List<Integer> cells = new ArrayList<>();
        for (int i = 0; i < CELLS * CELLS; i++) {
            cells.add(i);
        }
        Collections.shuffle(cells, random);
        List<FeatureKind> kinds = OpeningMaker.KINDS;
        for (int i = 0; i < cells.size(); i++) {
            FeatureKind kind = i < kinds.size() ? kinds.get(i) : kinds.get(random.nextInt(kinds.size()));
            TrueOpening o = maker.make(kind, REACH_MM);
            while (isLikeAnother(o)) {
                o = maker.make(kind, REACH_MM);
            }
            Place cell = new Place(MARGIN_MM + (cells.get(i) % CELLS + 0.5) * CELL_MM,
                    MARGIN_MM + (cells.get(i) / CELLS + 0.5) * CELL_MM, random.nextInt(6) == 0 ? 0 : 360 * random.nextDouble());
            openings.add(o.moved(cell));
        }
    }

    private boolean isLikeAnother(TrueOpening o) {
        return o.kind() != FeatureKind.FREE_OPENING && openings.stream().anyMatch(p -> p.kind() == o.kind()
                && Math.abs(p.lengthMm() - o.lengthMm()) < APART_MM && Math.abs(p.widthMm() - o.widthMm()) < APART_MM);
    }
}
