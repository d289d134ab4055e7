// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import org.locationtech.jts.geom.Envelope;

/**
 * One closed edge on the sheet: its form set at an anchor.
 *
 * @param part  number of the part from 0
 */
record Ring(RingForm form, double anchorX, double anchorY, int part) {

    /** Box of both tracks on the sheet, grown. */
    Envelope box(double byMm) {
        Envelope b = new Envelope(form.opening() ? form.part().box() : form.waste().box());
        b.expandToInclude(form.polygon().getEnvelopeInternal());
        b.translate(anchorX, anchorY);
        b.expandBy(byMm);
        return b;
    }

    boolean contains(double x, double y) {
        return form.contains(x - anchorX, y - anchorY);
    }
}
