// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.HashSet;
import java.util.Set;

/** Refuses a cost job that contradicts itself; each message names the object, the value and the way out. */
final class CostJobCheck {

    private CostJobCheck() {
    }

    static void check(CostJob job) {
        if (!job.code().matches("([A-Za-z][A-Za-z0-9]*)?")) {
            throw bad("code '" + job.code() + "' of cost job " + job.title(), "must hold letters and digits only, as P1");
        }
        if (job.lines().isEmpty()) {
            throw bad(job.title(), "has no order lines; add one");
        }
        Set<String> ids = new HashSet<>();
        job.parts().forEach(p -> part(job, p, ids));
        job.lines().forEach(CostJobCheck::line);
        for (int w = 0; w < job.works().size(); w++) {
            work(job, w);
        }
    }

    private static void part(CostJob job, CostPart part, Set<String> ids) {
        if (!ids.add(part.id())) {
            throw bad("part " + part.label(), "stands twice in the cost job; give it once with all its pieces");
        }
        if (part.work() < 0 || part.work() >= job.works().size()) {
            throw bad("part " + part.label(), "belongs to work " + part.work() + " of " + job.works().size()
                    + "; correct the index");
        }
        if (part.piecesPlaced() < 1 || !(part.areaMm2() > 0)) {
            throw bad("part " + part.label(), "has " + part.piecesPlaced() + " pieces of " + part.areaMm2()
                    + " mm2 on its sheets; lay it out first");
        }
    }

    private static void line(CostLine line) {
        if (line.quantity() < 1) {
            throw bad("order line " + line.label(), "has the quantity " + line.quantity() + "; enter 1 or more");
        }
        if (line.lots().stream().anyMatch(q -> q < 1)) {
            throw bad("order line " + line.label(), "has lots " + line.lots() + "; each must be 1 or more");
        }
        if (line.needs().isEmpty() && line.purchases().isEmpty()) {
            throw bad("order line " + line.label(), "needs nothing; give it a part or a bought item");
        }
    }

    private static void work(CostJob job, int index) {
        SheetWork work = job.works().get(index);
        if (work.runs().isEmpty() || work.runs().stream().anyMatch(r -> r.runs() < 1)) {
            throw bad(work.label(), "has no sheet that is run; lay it out first or leave it out");
        }
        if (WorkCells.members(job, index).isEmpty()) {
            throw bad(work.label(), "has sheets but no part; leave it out");
        }
    }

    private static IllegalArgumentException bad(String subject, String what) {
        return new IllegalArgumentException(subject + " " + what);
    }
}
