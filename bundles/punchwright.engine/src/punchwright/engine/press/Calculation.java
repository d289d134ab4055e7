// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * The single questions that come by telephone, each with its named inputs and figures that tell how they were made.
 *
 * <p>An input is a number in the unit its name carries. A missing required input or one that is not above 0 is an
 * {@link IllegalArgumentException} that names it; an input outside a formula's range gives a finding in the figure.
 */
public enum Calculation {

    /** Punching force, stripping force and work of a hit. */
    FORCE("force", List.of("cutLengthMm", "thicknessMm"), Map.of("shearHeightMm", 0.0, "wornFactor", 1.2)) {
        @Override
        List<Figure> figures(Map<String, Double> in, Material m) {
            Figure force = PunchingForce.figure(in.get("cutLengthMm"), in.get("thicknessMm"), m, in.get("shearHeightMm"),
                    in.get("wornFactor"));
            double flat = PunchingForce.flatN(in.get("cutLengthMm"), in.get("thicknessMm"), m.shearMPa());
            return List.of(force, StrippingForce.figure(force.value(), StrippingForce.USUAL_SHARE),
                    PunchWork.figure(PunchWork.USUAL_SHARE, flat, in.get("thicknessMm")));
        }
    },
    /** Die clearance by all rules, the material's own first. */
    CLEARANCE("clearance", List.of("thicknessMm"), Map.of()) {
        @Override
        List<Figure> figures(Map<String, Double> in, Material m) {
            return DieClearance.figures(m, in.get("thicknessMm"));
        }
    },
    /** Stripping force by the material's usual share and by the cut area. */
    STRIP("strip", List.of("cutLengthMm", "thicknessMm"), Map.of("share", StrippingForce.USUAL_SHARE)) {
        @Override
        List<Figure> figures(Map<String, Double> in, Material m) {
            double force = PunchingForce.flatN(in.get("cutLengthMm"), in.get("thicknessMm"), m.shearMPa());
            double byArea = StrippingForce.byEdgeAreaN(in.get("cutLengthMm"), in.get("thicknessMm"));
            String formula = String.format(Locale.ROOT, "24.13 L t = 24.13 x %.2f mm x %.2f mm", in.get("cutLengthMm"),
                    in.get("thicknessMm"));
            return List.of(StrippingForce.figure(force, in.get("share")), new Figure("stripping force by edge area", byArea, "N",
                    formula, "Machinery's Handbook, from memory", List.of()));
        }
    },
    /** Pitch and number of hits when nibbling with a round tool: straight, inside arc, outside arc. */
    NIBBLE("nibble", List.of("toolDiameterMm", "scallopMm"), Map.of("arcRadiusMm", 0.0, "lengthMm", 100.0)) {
        @Override
        List<Figure> figures(Map<String, Double> in, Material m) {
            return nibble(in.get("toolDiameterMm") / 2, in.get("scallopMm"), in.get("arcRadiusMm"), in.get("lengthMm"));
        }
    },
    /** Smallest hole by custom and by the stress of the punch. */
    MINIMUM_HOLE("minimum-hole", List.of("thicknessMm"), Map.of("permittedMPa", SmallestFeature.PERMITTED_STRESS_MPA)) {
        @Override
        List<Figure> figures(Map<String, Double> in, Material m) {
            return List.of(SmallestFeature.figure(m, in.get("thicknessMm"), in.get("permittedMPa")));
        }
    };

    private final String word;
    private final List<String> required;
    private final Map<String, Double> optional;

    Calculation(String word, List<String> required, Map<String, Double> optional) {
        this.word = word;
        this.required = required;
        this.optional = optional;
    }

    /** Word on a command line. */
    public String word() {
        return word;
    }

    /** Inputs that must be given, each above 0. */
    public List<String> required() {
        return required;
    }

    /** Inputs that may be given, with the values taken otherwise. */
    public Map<String, Double> optional() {
        return optional;
    }

    /** The figures for inputs by name; unknown names are refused. */
    public List<Figure> answer(Map<String, Double> inputs, Material material) {
        Map<String, Double> all = new TreeMap<>(optional);
        for (String name : required) {
            Double value = inputs.get(name);
            if (value == null || !(value > 0)) {
                throw new IllegalArgumentException(word + " needs " + name + " above 0; given: " + value);
            }
        }
        for (Map.Entry<String, Double> e : inputs.entrySet()) {
            if (!required.contains(e.getKey()) && !optional.containsKey(e.getKey())) {
                throw new IllegalArgumentException(word + " knows no " + e.getKey() + "; it takes " + required + " and "
                        + List.copyOf(all.keySet()));
            }
            all.put(e.getKey(), e.getValue());
        }
        return figures(all, material);
    }

    abstract List<Figure> figures(Map<String, Double> in, Material m);

    private static List<Figure> nibble(double r, double h, double arc, double length) {
        List<Figure> figures = new ArrayList<>();
        if (h >= r) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "nibble needs a scallop below the tool's radius; given: %.3f mm, radius %.3f mm", h, r));
        }
        double pitch = Scallop.straightPitchMm(r, h);
        figures.add(figure("pitch on a straight edge", pitch, "mm", "p = 2 sqrt(2 r h - h^2)", r, h));
        figures.add(figure("hits for the length", HitCount.steps(length, pitch) + 1.0, "hits", "ceil(L / p) + 1", r, h));
        if (arc >= r) {
            figures.add(figure("hits around an opening", HitCount.steps(2 * Math.PI, Scallop.insideStepRad(arc, r, h)), "hits",
                    "2 pi / theta inside", r, h));
        }
        if (arc > 0) {
            figures.add(figure("hits around a disc", HitCount.steps(2 * Math.PI, Scallop.outsideStepRad(arc, r, h)), "hits",
                    "2 pi / theta outside", r, h));
        }
        return figures;
    }

    private static Figure figure(String name, double value, String unit, String formula, double r, double h) {
        return new Figure(name, value, unit, String.format(Locale.ROOT, "%s, r %.2f mm, h %.3f mm", formula, r, h),
                "plane geometry", List.of());
    }
}
