// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/** How tools come under the ram. */
public enum HeadKind {
    /** One head; tools are fetched from magazine places or set by hand. */
    SINGLE_HEAD,
    /** A revolving turret that carries all its places. */
    TURRET
}
