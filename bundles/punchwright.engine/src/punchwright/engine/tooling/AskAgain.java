// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureSet;

/**
 * Asks the rule that refused a feature once more: has it a candidate on another sheet, on another machine, with another tool or
 * in another shape? Within the part as it is, with its neighbours and joints.
 *
 * <p>Few questions cost work: whether a feature is made depends on which tools are usable and turn, so that a question with no
 * more tools than one answered by no before is no again. What is known of a sheet and machine is kept for all features. After a
 * limit of work every answer is no, and {@link #exhausted} says so.
 */
final class AskAgain {

    /** Questions that cost work for one part. */
    private static final int MOST = 600;

    private final ToolingJob job;
    private final Set<String> forbidden;
    private final Map<List<Object>, List<UsableTool>> usable = new HashMap<>();
    private final Map<FeatureSet, Map<List<Object>, WaysMemory>> memories = new IdentityHashMap<>();
    private final Map<FeatureSet, List<Unit>> units = new IdentityHashMap<>();
    private final Map<Feature, Map<String, Answers>> answers = new IdentityHashMap<>();
    private int asked;

    /** Sets of usable tools with which a feature is made on a machine, and with which not. */
    private static final class Answers {
        private final Set<Set<String>> yes = new HashSet<>();
        private final List<Set<String>> no = new ArrayList<>();
    }

    AskAgain(ToolingJob job, Set<String> forbidden) {
        this.job = job;
        this.forbidden = forbidden;
    }

    boolean exhausted() {
        return asked >= MOST;
    }

    /** The feature of the part as it is. */
    boolean made(Trial trial, Feature feature) {
        return made(trial, feature, job.features());
    }

    /** {@code trial}: its tool, where there is one, stands in for the owned one of that id or is owned besides. */
    boolean made(Trial trial, Feature feature, FeatureSet within) {
        ToolingJob j = trial.job().of(within);
        if (!j.thicknessFits()) {
            return false;
        }
        List<UsableTool> tools = tools(j, trial.tool());
        Set<String> ids = ids(tools);
        Answers known = answers(feature, j);
        if (known.yes.contains(ids)) {
            return true;
        }
        if (known.no.stream().anyMatch(n -> n.containsAll(ids)) || exhausted()) {
            return false;
        }
        asked++;
        boolean made = candidate(j, tools, feature, within);
        (made ? known.yes : known.no).add(ids);
        return made;
    }

    /** Notes that the feature is not made as things are. */
    void refused(Feature feature) {
        answers(feature, job).no.add(ids(tools(job, null)));
    }

    private Answers answers(Feature feature, ToolingJob j) {
        return answers.computeIfAbsent(feature, f -> new HashMap<>()).computeIfAbsent(j.machine().id(), id -> new Answers());
    }

    private static Set<String> ids(List<UsableTool> tools) {
        Set<String> ids = new HashSet<>();
        tools.forEach(t -> ids.add(t.id() + (t.turning() ? " turns" : "")));
        return ids;
    }

    private boolean candidate(ToolingJob j, List<UsableTool> tools, Feature feature, FeatureSet within) {
        WaysMemory memory = memories.computeIfAbsent(within, w -> new HashMap<>())
                .computeIfAbsent(key(j), k -> new WaysMemory());
        List<Unit> all = units.computeIfAbsent(within, Unit::of);
        return new Candidates(j, all, tools, ChoiceWeights.USUAL, new HashMap<>(), memory).any(feature);
    }

    /** The tools usable on the job's sheet and machine. */
    List<UsableTool> tools(ToolingJob j, Tool more) {
        List<UsableTool> owned = usable.computeIfAbsent(key(j), k -> new ToolLimits(j, forbidden).usable());
        if (more == null) {
            return owned;
        }
        List<UsableTool> all = new ArrayList<>(owned.stream().filter(t -> !t.id().equals(more.id())).toList());
        all.addAll(new ToolLimits(j.with(more), Set.of()).usable());
        return all;
    }

    private static List<Object> key(ToolingJob j) {
        return List.of(j.material().id(), j.thicknessMm(), j.machine().id());
    }
}
