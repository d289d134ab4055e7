// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import punchwright.engine.geometry.Shape;
import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.Order;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.PartReader;
import punchwright.planner.plans.PlanWriter;

/** Writes parts, and the layouts of an order, arranged ones and those of its kept plans, as drawings that other programs read. */
final class DrawOperation implements ShopOperation {

    @Override
    public String name() {
        return "draw";
    }

    @Override
    public String summary() {
        return "write parts, or the layouts of an order (arranged ones and those of its kept plans), as DXF R12 or SVG in mm";
    }

    @Override
    public String usage() {
        return "PART|ORDER... [--form dxf|svg] [--to FOLDER]";
    }

    @Override
    public Set<String> options() {
        return Set.of("form", "to");
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().isEmpty()) {
            throw new UsageException("draw takes at least one part or order number");
        }
        PictureFile.Form form = form(call.option("form", "dxf"));
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            Path folder = Path.of(call.option("to", call.workspace().resolve(WorkspacePaths.OUT).toString()));
            Drawing drawing = new Drawing(new PartReader(new DrawingStore(workspace)), form, folder);
            for (String word : call.words()) {
                call.progress().check();
                draw(workspace, word, drawing);
            }
            List<String> lines = drawing.files.stream().map(Path::toString).toList();
            return new Outcome(ExitCode.GOOD, lines, List.of(), drawing.files, List.of());
        } catch (InputException e) {
            return new Outcome(ExitCode.INPUT, List.of(), PlanWriter.findings(List.of(e.finding())), List.of(), List.of());
        }
    }

    private static PictureFile.Form form(String typed) {
        for (PictureFile.Form form : PictureFile.Form.values()) {
            if (form.name().equals(typed.toUpperCase(Locale.ROOT))) {
                return form;
            }
        }
        throw new UsageException("--form is '" + typed + "'; dxf and svg can be written");
    }

    private static void draw(Workspace workspace, String word, Drawing drawing) throws IOException {
        boolean isOrder = workspace.orders().stream().anyMatch(o -> word.equals(o.getNumber()) || word.equals(o.getId()));
        if (!isOrder) {
            drawing.part(Finder.part(workspace, word));
            return;
        }
        Order order = Finder.order(workspace, word);
        List<Plan> plans = workspace.plans().stream().filter(p -> p.getOrder() == order).toList();
        if (plans.isEmpty() && order.getLayouts().isEmpty()) {
            throw new NotFoundException("plan or arranged layout of order", order.getNumber(), "");
        }
        for (KeptLayout layout : order.getLayouts()) {
            drawing.kept(order, layout);
        }
        for (Plan plan : plans) {
            drawing.plan(plan);
        }
    }

    /** The files written so far. */
    private static final class Drawing {

        private final PartReader parts;
        private final PictureFile.Form form;
        private final Path folder;
        private final List<Path> files = new ArrayList<>();

        Drawing(PartReader parts, PictureFile.Form form, Path folder) {
            this.parts = parts;
            this.form = form;
            this.folder = folder;
        }

        void part(punchwright.model.work.Part part) throws IOException {
            Shape shape = parts.shape(part);
            String number = part.getNumber() == null ? part.getId() : part.getNumber();
            files.add(PictureFile.of(List.of(shape)).write(form, folder, "part", number));
        }

        void kept(Order order, KeptLayout layout) throws IOException {
            if (layout.getStock() == null || layout.getStock().eIsProxy()) {
                throw new NotFoundException("stock item of the arranged layout", layout.getId(), "");
            }
            files.add(PictureFile.of(layout, parts).write(form, folder, "layout", order.getNumber(), "arranged", layout.getId()));
        }

        void plan(Plan plan) throws IOException {
            int number = 1;
            for (SheetJob job : plan.getJobs()) {
                for (Layout layout : job.getLayouts()) {
                    files.add(PictureFile.of(layout, parts).write(form, folder, "layout", plan.getOrder().getNumber(),
                            plan.getMachine().getId(), String.valueOf(number++)));
                }
            }
        }
    }
}
