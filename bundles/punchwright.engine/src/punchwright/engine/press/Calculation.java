// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import punchwright.engine.finding.Finding;

/**
 * The single questions that come by telephone, each with its named inputs and figures that tell how they were made. The stage's
 * entry point for persons; screens and command line are made from this list.
 *
 * <p>A number that makes no sense (below 0, a 0 where none may be, a missing one) is an {@link IllegalArgumentException} that
 * names it; a number outside the range of the formulas gives a finding and still a figure.
 */
public enum Calculation {

    /** Force of any cut with shear on the punch and worn edges, against a limit. */
    FORCE("force", ForceQuestions::force, Inputs.CUT, Inputs.THICKNESS, Inputs.STRENGTH, Inputs.SHEAR_HEIGHT, Inputs.PUNCHES,
            Inputs.WORN, Inputs.LIMIT),
    /** Share of the flat force with a roof or a one-sided slope, by shape. */
    SHEAR("shear", ForceQuestions::shear, Inputs.SLOT, Inputs.SLIT_WIDTH, Inputs.THICKNESS, Inputs.SHEAR_HEIGHT),
    /** Stripping force by two rules. */
    STRIP("strip", ForceQuestions::strip, Inputs.CUT, Inputs.THICKNESS, Inputs.STRENGTH, Inputs.STRIP_SHARE, Inputs.LIMIT),
    /** Work of a hit and power of a run. */
    WORK("work", ForceQuestions::work, Inputs.CUT, Inputs.THICKNESS, Inputs.STRENGTH, Inputs.WORK_SHARE, Inputs.RATE_PER_MIN,
            Inputs.EFFICIENCY),
    /** Thickest sheet for a force and a punch. */
    LARGEST_THICKNESS("largest-thickness", ForceQuestions::thickness, Inputs.FORCE_ON_HAND, Inputs.CUT, Inputs.STRENGTH,
            Inputs.WORN, Inputs.SIZE, Inputs.PERMITTED),
    /** Inserts of a multi-tool: size, ring, tilt. */
    MULTI_TOOL("multi-tool", ForceQuestions::multiTool, Inputs.OUTER, Inputs.INSERTS, Inputs.WALL, Inputs.INSERT_FORCE,
            Inputs.LIMIT),
    /** Die clearance by all rules, the one used first, the nearest on hand and the edge it gives. */
    CLEARANCE("clearance", ClearanceQuestions::clearance, Inputs.THICKNESS, Inputs.STRENGTH, Inputs.PERCENT_OF_T, Inputs.C,
            Inputs.ON_HAND, Inputs.SIZE),
    /** Whether slugs may come up. */
    SLUG("slug", ClearanceQuestions::slug, Inputs.PUNCH, Inputs.THICKNESS, Inputs.CLEARANCE, Inputs.STRENGTH, Inputs.OILED),
    /** Smallest round hole. */
    MINIMUM_HOLE("minimum-hole", FeatureQuestions::hole, Inputs.THICKNESS, Inputs.STRENGTH, Inputs.HOLE_FACTOR, Inputs.PERMITTED),
    /** Least width of a slot. */
    MINIMUM_SLOT("minimum-slot", FeatureQuestions::slot, Inputs.SLOT, Inputs.THICKNESS, Inputs.STRENGTH, Inputs.HOLE_FACTOR,
            Inputs.PERMITTED),
    /** Webs, edge distances, distances to bends and forms. */
    WEB("web", FeatureQuestions::web, Inputs.THICKNESS, Inputs.BEND),
    /** Class of general tolerances that is reached. */
    TOLERANCE("tolerance", FeatureQuestions::tolerance, Inputs.NOMINAL, Inputs.ACCURACY, Inputs.TURNING, Inputs.WEAR,
            Inputs.EDGE_SCALLOP),
    /** Copper bar: hole, edge, web, stress. */
    COPPER_BAR("copper-bar", FeatureQuestions::copperBar, Inputs.BAR, Inputs.BAR_HOLE, Inputs.STRENGTH, Inputs.EDGE_DISTANCE,
            Inputs.WEB,
            Inputs.PERMITTED),
    /** Pitch and number of hits when nibbling with a round tool. */
    NIBBLE("nibble", NibbleQuestions::nibble, Inputs.TOOL, Inputs.SCALLOP, Inputs.ARC, Inputs.ARC_ANGLE, Inputs.EDGE,
            Inputs.SHEET),
    /** Number of hits and equal steps along a slit or in a rectangular opening. */
    SLIT("slit", NibbleQuestions::slit, Inputs.CUT, Inputs.TOOL_LENGTH, Inputs.OVERLAP, Inputs.SLIT_WIDTH, Inputs.TOOL_WIDTH,
            Inputs.SHEET),
    /** Hits between grinds. */
    LIFE("life", LifeQuestions::life, Inputs.THICKNESS, Inputs.LIFE_FACTOR, Inputs.DRY, Inputs.NIBBLED),
    /** Grinds, life in all and cost per hit. */
    REGRIND("regrind", LifeQuestions::regrind, Inputs.PRICE, Inputs.GRIND_COST, Inputs.RESERVE, Inputs.PER_GRIND, Inputs.HITS,
            Inputs.SINCE, Inputs.RESIDUAL),
    /** Force of louvres, embosses, coins and half-shears, heights and distances. */
    FORMING("forming", FormQuestions::forming, Inputs.FORMED, Inputs.FORM_SHEET, Inputs.STRENGTH, Inputs.TENSILE, Inputs.COINED,
            Inputs.HEIGHT, Inputs.FORM_WIDTH, Inputs.DIE, Inputs.DEAD_ZONE, Inputs.LIMIT),
    /** Collar for a thread: core, height, hole punched first, force. */
    COLLAR("collar", FormQuestions::collar, Inputs.THREAD, Inputs.COLLAR_SHEET, Inputs.TENSILE, Inputs.COLLAR_HEIGHT,
            Inputs.DIE_RADIUS, Inputs.LIMIT),
    /** Countersink: depth, hole punched first, force. */
    COUNTERSINK("countersink", FormQuestions::countersink, Inputs.HEAD, Inputs.HOLE, Inputs.SINK_SHEET, Inputs.TENSILE,
            Inputs.CONE,
            Inputs.LIMIT);

    private final String word;
    private final Consumer<Working> method;
    private final List<Input> inputs;

    Calculation(String word, Consumer<Working> method, Input... inputs) {
        this.word = word;
        this.method = method;
        this.inputs = List.of(inputs);
    }

    /** Word on a command line. */
    public String word() {
        return word;
    }

    /** What it answers, for a person. */
    public String title(Locale locale) {
        return Words.of("question." + word, locale);
    }

    /** What it takes, in the order in which a person is asked. */
    public List<Input> inputs() {
        return inputs;
    }

    /** The question of a word. */
    public static Calculation named(String word) {
        for (Calculation c : values()) {
            if (c.word.equals(word)) {
                return c;
            }
        }
        throw new IllegalArgumentException("there is no question '" + word + "'; there are "
                + String.join(", ", List.of(values()).stream().map(Calculation::word).toList()));
    }

    /** The answer for inputs by name and a material's record. */
    public Answer answer(Map<String, Double> given, Material material) {
        return answer(given, Basis.of(material));
    }

    /**
     * The answer for inputs by name.
     *
     * @throws IllegalArgumentException when one is missing, unknown or makes no sense
     */
    public Answer answer(Map<String, Double> given, Basis basis) {
        for (String name : given.keySet()) {
            if (inputs.stream().noneMatch(i -> i.name().equals(name))) {
                throw new IllegalArgumentException(word + " knows no " + name + "; it takes "
                        + String.join(", ", inputs.stream().map(Input::name).toList()));
            }
        }
        Map<Input, Double> values = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Input i : inputs) {
            double value = value(i, given, basis);
            i.refuseNonsense(word, value);
            findings.addAll(i.usual() == value ? List.of() : i.check(word, value));
            values.put(i, value);
        }
        Working working = new Working(word, basis, values);
        method.accept(working);
        findings.addAll(working.findings());
        return new Answer(this, basis, values, working.figures(), findings.stream().distinct().toList());
    }

    private double value(Input input, Map<String, Double> given, Basis basis) {
        Double typed = given.get(input.name());
        OptionalDouble known = typed == null ? basis.value(input) : OptionalDouble.of(typed);
        return known.orElseThrow(() -> new IllegalArgumentException(word + " needs " + input.name() + ", "
                + input.label(Locale.ENGLISH) + (input.from() == Input.From.NOWHERE ? "" : ", or a material that has it")));
    }
}
