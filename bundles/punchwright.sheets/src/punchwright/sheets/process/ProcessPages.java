// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.process;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Placement;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.shop.Library;
import punchwright.model.shop.Material;
import punchwright.model.shop.Revision;
import punchwright.model.work.Part;
import punchwright.sheets.PartOutline;
import punchwright.sheets.book.Book;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.book.Texts;

/** What every sheet of a process sheet needs: the plan, words, and the same header and footer. */
public record ProcessPages(Plan plan, Library library, Function<Part, PartOutline> outlines, Texts texts, Book book) {

    String text(String key, Object... arguments) {
        return texts.get(key, arguments);
    }

    /** Identification of the process sheet. */
    public String number() {
        return blankIfNull(plan.getOrder() == null ? plan.getId() : plan.getOrder().getNumber()) + " / " + machine();
    }

    String machine() {
        return plan.getMachine() == null ? "" : blankIfNull(plan.getMachine().getName());
    }

    /** Date of the library revision that made the plan; else of the order. */
    public String date() {
        return library.getRevisions().stream().filter(r -> r.getNumber() == plan.getLibraryRevision()).map(Revision::getDate)
                .findFirst().orElse(plan.getOrder() == null ? "" : blankIfNull(plan.getOrder().getReceived()));
    }

    SheetPen sheet(String name, int titleFrom, int titleTo) {
        return book.sheet(name).page(true, titleFrom, titleTo, blankIfNull(library.getName()),
                text("process.title") + "  " + number(), text("process.footer", plan.getLibraryRevision(),
                        blankIfNull(plan.getProgramVersion())), text("page"));
    }

    /** Parts on a job's sheets in order of first appearance; their letters in pictures and tables. */
    static List<Part> parts(SheetJob job) {
        Set<Part> parts = new LinkedHashSet<>();
        for (Layout layout : job.getLayouts()) {
            layout.getPlacements().stream().map(Placement::getPart).filter(p -> p != null).forEach(parts::add);
        }
        return new ArrayList<>(parts);
    }

    String material(SheetJob job) {
        Material m = job.getMaterial();
        String grade = m == null ? "" : blankIfNull(m.getGrade()) + (blankIfNull(m.getStandard()).isEmpty() ? "" : ", "
                + m.getStandard());
        return grade + ", " + texts.number(job.getThicknessMm(), 3) + " mm";
    }

    /** Mass of one sheet, kg. */
    static double massKg(SheetJob job, Layout layout) {
        double density = job.getMaterial() == null ? 0 : job.getMaterial().getDensityKgPerDm3();
        return layout.getLengthMm() * layout.getWidthMm() * job.getThicknessMm() * density * 1e-6;
    }

    static String blankIfNull(String text) {
        return text == null ? "" : text;
    }

    static String named(Part part) {
        return part == null ? "" : (blankIfNull(part.getNumber()) + " " + blankIfNull(part.getName())).trim();
    }
}
