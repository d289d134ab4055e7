// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import punchwright.engine.press.Answer;
import punchwright.engine.press.Basis;
import punchwright.engine.press.Calculation;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.Input;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.model.files.Workspace;
import punchwright.model.shop.Machine;
import punchwright.planner.convert.MaterialReader;
import punchwright.planner.plans.PlanWriter;

/**
 * Answers one question of the press: inputs as options with units, a material and a force limit from the workspace if wanted.
 * Warnings (a value outside the range of a formula, a limit passed) end with {@link ExitCode#FINDINGS}, notes do not.
 */
final class CalcOperation implements ShopOperation {

    private static final String MATERIAL = "material";
    private static final String GROUP = "group";
    private static final String RULE = "rule";
    private static final String MACHINE = "machine";
    private static final String PLACE = "place";
    private static final String LIMIT = "limit";
    private static final Set<String> OTHERS = Set.of("json", MATERIAL, GROUP, RULE, MACHINE, PLACE);

    @Override
    public String name() {
        return "calc";
    }

    @Override
    public String summary() {
        return "answer one question of the press, with formula, source and every figure on the way";
    }

    @Override
    public String usage() {
        return "QUESTION [--INPUT VALUE[UNIT]...] [--material MATERIAL | --group GROUP] [--rule RULE]"
                + " [--machine MACHINE [--place PLACE]] [--json]";
    }

    @Override
    public String details(List<String> words) {
        return CalcText.help(words.isEmpty() ? List.of(Calculation.values()) : List.of(question(words)));
    }

    @Override
    public Set<String> options() {
        Set<String> all = new TreeSet<>(OTHERS);
        for (Calculation c : Calculation.values()) {
            c.inputs().forEach(i -> all.add(i.name()));
        }
        return all;
    }

    @Override
    public Outcome run(Call call) throws IOException {
        Calculation question = question(call.words());
        Map<String, Double> given = values(question, call);
        Basis basis = basis(call);
        limit(question, call, given);
        Answer answer;
        try {
            answer = question.answer(given, basis);
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
        return new Outcome(answer.warned() ? ExitCode.FINDINGS : ExitCode.GOOD, CalcText.lines(answer),
                PlanWriter.findings(answer.findings()), List.of(), List.of(), List.of(CalcRecord.of(answer, given.keySet())));
    }

    private static Calculation question(List<String> words) {
        if (words.size() != 1) {
            throw new UsageException("calc takes one question of "
                    + Arrays.stream(Calculation.values()).map(Calculation::word).collect(Collectors.joining(", ")));
        }
        try {
            return Calculation.named(words.getFirst());
        } catch (IllegalArgumentException e) {
            throw new UsageException(e.getMessage());
        }
    }

    /** The inputs typed, in the units used inside. */
    private static Map<String, Double> values(Calculation question, Call call) {
        Map<String, Double> given = new TreeMap<>();
        Set<String> unknown = new TreeSet<>(call.options().keySet());
        unknown.removeAll(OTHERS);
        unknown.removeAll(Set.of("help", "quiet", "version"));
        for (Input i : question.inputs()) {
            unknown.remove(i.name());
            String typed = call.option(i.name(), null);
            if (typed != null) {
                given.put(i.name(), read(i, typed));
            }
        }
        if (!unknown.isEmpty()) {
            throw new UsageException(question.word() + " knows no --" + String.join(", --", unknown) + "; it takes "
                    + question.inputs().stream().map(i -> "--" + i.name()).collect(Collectors.joining(", ")));
        }
        return given;
    }

    private static double read(Input input, String typed) {
        try {
            return input.quantity().read(typed);
        } catch (IllegalArgumentException e) {
            throw new UsageException("--" + input.name() + ": " + e.getMessage());
        }
    }

    private static Basis basis(Call call) throws IOException {
        String material = call.option(MATERIAL, null);
        Basis basis;
        if (material == null) {
            basis = Basis.of(choice(MaterialGroup.class, GROUP, call.option(GROUP, CalcText.word(MaterialGroup.MILD_STEEL))));
        } else if (call.options().containsKey(GROUP)) {
            throw new UsageException("--material and --group exclude each other: a material has its group");
        } else {
            try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
                Material read = MaterialReader.read(Finder.material(workspace, material));
                basis = Basis.of(read);
            }
        }
        String rule = call.option(RULE, null);
        return rule == null ? basis : new Basis(basis.group(), choice(ClearanceRule.class, RULE, rule), basis.material());
    }

    /** The constant that a word names. */
    private static <E extends Enum<E>> E choice(Class<E> type, String option, String typed) {
        for (E e : type.getEnumConstants()) {
            if (CalcText.word(e).equals(typed.toLowerCase(Locale.ROOT))) {
                return e;
            }
        }
        throw new UsageException("--" + option + " is one of "
                + Arrays.stream(type.getEnumConstants()).map(CalcText::word).collect(Collectors.joining(", ")) + "; given: "
                        + typed);
    }

    /** The force limit of a machine or of one of its places, for questions that compare with one. */
    private static void limit(Calculation question, Call call, Map<String, Double> given) throws IOException {
        String machine = call.option(MACHINE, null);
        if (machine == null) {
            if (call.options().containsKey(PLACE)) {
                throw new UsageException("--place needs --machine");
            }
            return;
        }
        if (question.inputs().stream().noneMatch(i -> i.name().equals(LIMIT)) || given.containsKey(LIMIT)) {
            throw new UsageException(question.word() + (given.containsKey(LIMIT) ? " takes --limit or --machine, not both"
                    : " compares with no force limit, so --machine makes no sense"));
        }
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            Machine found = Finder.machine(workspace, machine);
            given.put(LIMIT, Finder.forceLimitN(found, call.option(PLACE, null)));
        }
    }
}
