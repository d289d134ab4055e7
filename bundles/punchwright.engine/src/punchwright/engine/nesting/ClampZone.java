// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** What the strip along the clamped edge may hold. */
public enum ClampZone {
    /** No part. */
    NO_PART,
    /**
     * A part may lie there as long as none of its edges that are to be cut, grown by the reach of a hit, comes into the strip.
     * An edge on the sheet's own edge is not cut.
     */
    NO_HIT
}
