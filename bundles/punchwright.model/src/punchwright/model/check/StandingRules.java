// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.ArrayList;
import java.util.List;

import punchwright.model.shop.Machine;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.model.shop.ShopPackage.Literals;
import punchwright.model.shop.Standing;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolFamily;

/** Rules for tools that stand in a machine. */
final class StandingRules {

    private StandingRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-045", Standing.class, (s, r) -> {
            if (s.getPlace() != null && s.getPlace().eContainer() != s.eContainer()) {
                r.add(Literals.STANDING__PLACE, s.getPlace());
            }
        });
        rows.error("PW-M-046", Standing.class, StandingRules::sizeFits);
        rows.error("PW-M-047", Standing.class, StandingRules::familyFits);
        rows.error("PW-M-048", Machine.class, StandingRules::placeTakenOnce);
        rows.error("PW-M-049", Standing.class, StandingRules::insertFits);
    }

    private static void sizeFits(Standing standing, Report report) {
        Place place = standing.getPlace();
        if (place == null || standing.getHolder() == null && standing.getTool() == null) {
            return;
        }
        double need = standing.getHolder() != null ? standing.getHolder().getOuterDiameterMm()
                : ToolSizes.circumscribedMm(standing.getTool());
        if (need > place.getMaxToolDiameterMm()) {
            report.add(Literals.STANDING__PLACE, need, place.getMaxToolDiameterMm());
        }
    }

    private static void familyFits(Standing standing, Report report) {
        Place place = standing.getPlace();
        if (place == null || place.getAccepts().isEmpty() || standing.getHolder() == null && standing.getTool() == null) {
            return;
        }
        ToolFamily family = standing.getHolder() != null ? ToolFamily.HOLDER : ToolSizes.familyOf(standing.getTool().getShape());
        if (!place.getAccepts().contains(family)) {
            report.add(Literals.STANDING__PLACE, family, place);
        }
    }

    /** A place holds one single tool, or one holder with one insert in each position. */
    private static void placeTakenOnce(Machine machine, Report report) {
        List<Standing> before = new ArrayList<>();
        for (Standing standing : machine.getStanding()) {
            if (standing.getPlace() != null && before.stream().anyMatch(other -> clash(other, standing))) {
                report.on(standing, Literals.STANDING__PLACE, standing.getPlace());
            }
            before.add(standing);
        }
    }

    private static boolean clash(Standing one, Standing other) {
        if (one.getPlace() != other.getPlace()) {
            return false;
        }
        boolean sameHolder = one.getHolder() != null && one.getHolder() == other.getHolder();
        return !sameHolder || one.getInsertPosition() == other.getInsertPosition();
    }

    private static void insertFits(Standing standing, Report report) {
        MultiToolHolder holder = standing.getHolder();
        Tool tool = standing.getTool();
        if (holder == null || tool == null) {
            return;
        }
        double size = ToolSizes.circumscribedMm(tool);
        boolean inRange = standing.getInsertPosition() >= 1 && standing.getInsertPosition() <= holder.getInsertCount();
        if (!inRange || size > holder.getLargestInsertDiameterMm()) {
            report.add(Literals.STANDING__INSERT_POSITION, standing.getInsertPosition(), holder.getInsertCount(), size,
                    holder.getLargestInsertDiameterMm());
        }
    }
}
