// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.List;
import java.util.stream.Collectors;

import punchwright.engine.nesting.Nesting;
import punchwright.model.work.KeptLayout;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.PieceProblem;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/**
 * One kept layout with its figures.
 *
 * @param number   running number in the table, from 1
 * @param kept     the record
 * @param sheet    as it is arranged; null where its stock or material is gone
 * @param figures  use, cost, remnants; null without a sheet
 * @param problems what the check says
 */
public record BenchRow(int number, KeptLayout kept, ArrangedSheet sheet, Nesting figures, List<PieceProblem> problems) {

    /** Its stock item as people call it. */
    String stock() {
        return kept.getStock() == null || kept.getStock().eIsProxy() ? Texts.of("layouts.noStock") : kept.getStock().getName();
    }

    String size() {
        return sheet == null ? "" : Numbers.plain(sheet.sheet().lengthMm()) + " \u00d7 " + Numbers.plain(sheet.sheet().widthMm());
    }

    String material() {
        return kept.getMaterial() == null ? ""
                : kept.getMaterial().getName() + ", " + Numbers.plain(kept.getThicknessMm()) + " mm";
    }

    Double usePercent() {
        return figures == null ? null : 100 * figures.utilisation();
    }

    Double cost() {
        return figures == null ? null : figures.cost().total();
    }

    String remnants() {
        return figures == null ? "" : figures.remnants().stream()
                .map(r -> Numbers.plain(Math.round(r.lengthMm())) + " \u00d7 " + Numbers.plain(Math.round(r.widthMm())))
                .collect(Collectors.joining(", "));
    }

    /** The verdict of the check in a word. */
    String verdict() {
        return sheet == null ? Texts.of("layouts.noStock") : Texts.of("layouts.verdict", problems.size());
    }
}
