// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Placement;
import punchwright.engine.nesting.check.LayoutCheck;
import punchwright.engine.nesting.check.LayoutReason;

/**
 * Asks the independent check about a sheet with each piece as a part of its own, named by its number, so that a finding says
 * which pieces it concerns.
 */
final class SheetProblems {

    private SheetProblems() {
    }

    /** All problems, or with an index from 0 those of that piece. */
    static List<PieceProblem> of(ArrangedSheet sheet, int index) {
        List<NestPart> parts = new ArrayList<>();
        List<Placement> placements = new ArrayList<>();
        double web = sheet.job().parts().stream().mapToDouble(NestPart::webMm).max().orElse(0);
        Bounds box = index < 0 ? null : sheet.box(sheet.pieces().get(index));
        for (int i = 0; i < sheet.pieces().size(); i++) {
            Piece piece = sheet.pieces().get(i);
            if (box == null || i == index || near(box, sheet.box(piece), web)) {
                String id = String.valueOf(i + 1);
                sheet.part(piece).ifPresent(p -> parts.add(new NestPart(id, p.shape(), 1, p.anglesDeg(), p.webMm())));
                placements.add(new Placement(id, piece.pose()));
            }
        }
        List<PieceProblem> problems = new ArrayList<>();
        for (Finding f : LayoutCheck.of(sheet.job().withParts(parts), new Layout(sheet.sheet(), placements, 1))) {
            PieceProblem problem = new PieceProblem((LayoutReason) f.reason(), numbers(f), f);
            if (index < 0 || problem.pieces().contains(index + 1)) {
                problems.add(problem);
            }
        }
        return problems;
    }

    private static boolean near(Bounds a, Bounds b, double web) {
        return a.minX() < b.maxX() + web && a.maxX() > b.minX() - web && a.minY() < b.maxY() + web && a.maxY() > b.minY() - web;
    }

    /** The names of pieces are numbers: those among the arguments that are texts of digits. */
    private static List<Integer> numbers(Finding finding) {
        Set<Integer> numbers = new LinkedHashSet<>();
        for (Object argument : finding.arguments()) {
            if (argument instanceof String text && text.matches("\\d{1,6}")) {
                numbers.add(Integer.parseInt(text));
            }
        }
        return List.copyOf(numbers);
    }
}
