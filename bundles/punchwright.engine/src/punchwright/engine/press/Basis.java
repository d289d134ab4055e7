// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.OptionalDouble;

/**
 * What a question knows of the sheet beside its numbers.
 *
 * @param group    group for penetration, life and customs
 * @param rule     which clearance rule is used
 * @param material the record the values come from; null where only a group is known
 */
public record Basis(MaterialGroup group, ClearanceRule rule, Material material) {

    /** Everything from a material's record. */
    public static Basis of(Material material) {
        return new Basis(material.group(), material.clearanceRule(), material);
    }

    /** A group alone; strengths must be given, the rest is common practice. */
    public static Basis of(MaterialGroup group) {
        return new Basis(group, ClearanceRule.OEHLER_KAISER, null);
    }

    /** The value that stands for an input not given; empty where nothing does. */
    OptionalDouble value(Input input) {
        if (material != null) {
            switch (input.from()) {
                case SHEAR:
                    return OptionalDouble.of(material.shearMPa());
                case TENSILE:
                    return OptionalDouble.of(material.tensileMaxMPa());
                case CLEARANCE_PERCENT:
                    return OptionalDouble.of(material.clearancePercent());
                case HOLE_FACTOR:
                    return OptionalDouble.of(material.minimumHoleFactor());
                case LIFE_FACTOR:
                    return OptionalDouble.of(material.lifeFactor());
                default:
                    break;
            }
        }
        return custom(input);
    }

    private OptionalDouble custom(Input input) {
        if (input.from() == Input.From.HOLE_FACTOR) {
            return OptionalDouble.of(holeFactor(group));
        }
        return input.required() ? OptionalDouble.empty() : OptionalDouble.of(input.usual());
    }

    /** Smallest hole as a multiple of t: 1.0 mild steel, 0.8 aluminium and copper, 1.5 stainless. Common practice. */
    static double holeFactor(MaterialGroup group) {
        return switch (group) {
            case ALUMINIUM, COPPER -> 0.8;
            case STAINLESS_STEEL, HIGH_STRENGTH_STEEL -> 1.5;
            default -> 1.0;
        };
    }
}
