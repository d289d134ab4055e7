// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.engine.planning.CancelledException;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Part;
import punchwright.planner.convert.InputException;
import punchwright.planner.plans.PartTooling;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.job.Background;
import punchwright.ui.job.MonitorProgress;
import punchwright.ui.text.Texts;

/** Weighs tools beside the window, on copies; a run that was overtaken by another one is cancelled and its result dropped. */
final class WeighingRun {

    private int turn;
    private Background<Result> running;
    private PartWeighing before;

    /**
     * What came out.
     *
     * @param weighing the choice; null when the part cannot be read
     * @param lines    lines of the table
     * @param scene    the picture; null when the part cannot be read
     * @param error    why it cannot be read, with the way out; empty when it can
     */
    record Result(PartWeighing weighing, List<FeatureLine> lines, FeatureScene scene, String error) {

        private static Result failed(String why) {
            return new Result(null, List.of(), null, why);
        }
    }

    /**
     * Starts with the records as they are now; {@code then} gets the result on the UI thread unless another start came between.
     */
    void start(Library library, Part part, Machine machine, WorkspacePaths paths, Consumer<Result> then) {
        stop();
        int mine = turn;
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Library shop = (Library) copier.copy(library);
        Part copy = (Part) copier.copy(part);
        copier.copyReferences();
        Machine press = (Machine) copier.get(machine);
        PartWeighing last = before;
        running = Background.start(Texts.of("job.weigh", part.getName()),
                monitor -> weigh(shop, copy, press, paths, last, monitor), result -> {
            if (mine == turn) {
                before = result.weighing();
                then.accept(result);
            }
        });
    }

    /** Cancels what is running and drops its result. */
    void stop() {
        turn++;
        if (running != null) {
            running.cancel();
            running = null;
        }
    }

    private static Result weigh(Library library, Part part, Machine machine, WorkspacePaths paths, PartWeighing before,
            IProgressMonitor monitor) {
        try {
            PartWeighing weighing = new PartTooling(library, paths)
                    .weigh(part, machine, before, new MonitorProgress(monitor, Background.TICKS));
            return new Result(weighing, FeatureLines.of(weighing), new FeatureScene(weighing, library.getTools()), "");
        } catch (CancelledException e) {
            throw new OperationCanceledException();
        } catch (InputException e) {
            return Result.failed(e.finding().message(Locale.getDefault()) + " " + e.finding().remedy(Locale.getDefault()));
        } catch (IllegalArgumentException e) {
            return Result.failed(Texts.of("part.badShape", String.valueOf(e.getMessage())));
        }
    }
}
