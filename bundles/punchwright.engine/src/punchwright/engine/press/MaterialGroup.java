// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/** Material groups for clearance, life and smallest features. */
public enum MaterialGroup {
    MILD_STEEL, COATED_STEEL, HIGH_STRENGTH_STEEL, STAINLESS_STEEL, ALUMINIUM, COPPER, BRASS
}
