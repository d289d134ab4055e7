// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.press.Place;

/**
 * Stands to places: as many as can be (augmenting paths, Kuhn 1955), each trying the smallest, weakest, non-turning place that
 * takes it first so that larger ones stay free. Stands that come first keep a place when not all get one.
 */
final class PlaceMatching {

    private final List<Place> places;
    private final List<Stand> stands;
    private final int[] standAt;

    PlaceMatching(List<Place> places, List<Stand> stands) {
        this.places = places;
        this.stands = stands;
        standAt = new int[places.size()];
        Arrays.fill(standAt, -1);
        for (int i = 0; i < stands.size(); i++) {
            augment(i, new boolean[places.size()]);
        }
    }

    /** Place index of each stand; -1 where none is left. */
    int[] placeOf() {
        int[] at = new int[stands.size()];
        Arrays.fill(at, -1);
        for (int p = 0; p < standAt.length; p++) {
            if (standAt[p] >= 0) {
                at[standAt[p]] = p;
            }
        }
        return at;
    }

    private boolean augment(int stand, boolean[] seen) {
        for (int p : preferred(stands.get(stand))) {
            if (!seen[p]) {
                seen[p] = true;
                if (standAt[p] < 0 || augment(standAt[p], seen)) {
                    standAt[p] = stand;
                    return true;
                }
            }
        }
        return false;
    }

    private List<Integer> preferred(Stand stand) {
        List<Integer> fitting = new ArrayList<>();
        for (int p = 0; p < places.size(); p++) {
            if (stand.fits(places.get(p))) {
                fitting.add(p);
            }
        }
        fitting.sort(Comparator.comparing((Integer p) -> !stand.needsTurn() && places.get(p).turns())
                .thenComparing(p -> places.get(p).maxToolDiameterMm()).thenComparing(p -> places.get(p).forceLimitN())
                .thenComparing(p -> p));
        return fitting;
    }
}
