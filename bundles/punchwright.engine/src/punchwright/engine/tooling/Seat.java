// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.press.Place;

/** Where one tool can sit: a place, or an insert of a holder in a place ({@code holder} null when alone). */
record Seat(Place place, Holder holder) {

    boolean turns() {
        return holder == null ? place.turns() : holder.insertsTurn();
    }

    double largestDiameterMm() {
        return holder == null ? place.maxToolDiameterMm() : holder.maxInsertDiameterMm();
    }

    double forceLimitN() {
        return holder == null ? place.forceLimitN() : Math.min(place.forceLimitN(), holder.forceLimitN());
    }

    String name() {
        return holder == null ? place.id() : place.id() + "/" + holder.name();
    }
}
