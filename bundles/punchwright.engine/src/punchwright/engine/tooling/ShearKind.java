// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/** How the punch face is ground. */
public enum ShearKind {
    FLAT, ROOF, ONE_SIDED
}
