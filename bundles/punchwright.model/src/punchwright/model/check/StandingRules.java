// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.HashMap;
import java.util.Map;

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

    private static void placeTakenOnce(Machine machine, Report report) {
        Map<String, Standing> seen = new HashMap<>();
        for (Standing standing : machine.getStanding()) {
            if (standing.getPlace() == null) {
                continue;
            }
            String slot = standing.getPlace().getId() + " " + (standing.getHolder() == null ? 0 : standing.getInsertPosition());
            Standing first = seen.putIfAbsent(slot, standing);
            Standing alone = standing.getHolder() == null ? null : seen.get(standing.getPlace().getId() + " 0");
            if (first != null || alone != null) {
                report.on(standing, Literals.STANDING__PLACE, standing.getPlace());
            }
        }
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
