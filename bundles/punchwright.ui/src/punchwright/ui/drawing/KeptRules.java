// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;

import punchwright.model.edit.Edits;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Library;
import punchwright.model.shop.ShopPackage;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.ui.job.Messages;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;

/** Rules that were found at a drawing and become rules of the shop: a change of the library, with its own undo there. */
final class KeptRules {

    private KeptRules() {
    }

    /** Puts rules before those of the shop; the library is saved when nothing else in it waits to be saved. */
    static void enter(Session session, List<LayerRule> rules) {
        if (rules.isEmpty()) {
            return;
        }
        Library library = session.workspace().library();
        OpenFile file = session.fileOf(library);
        boolean clean = !file.isDirty();
        if (library.getLayerRules().isEmpty()) {
            ShopLayerRules.usual(Locale.getDefault()).forEach(r -> file.run(Edits.add(file.domain(), library,
                    ShopPackage.Literals.LIBRARY__LAYER_RULES, r)));
        }
        for (int i = rules.size() - 1; i >= 0; i--) {
            LayerRule rule = EcoreUtil.copy(rules.get(i));
            rule.setId(freeId(library, rule));
            file.run(AddCommand.create(file.domain(), library, ShopPackage.Literals.LIBRARY__LAYER_RULES, List.of(rule), 0));
        }
        if (clean) {
            try {
                file.save();
            } catch (IOException e) {
                Messages.show(null, e);
            }
        }
    }

    private static String freeId(Library library, LayerRule rule) {
        Set<String> taken = new LinkedHashSet<>();
        library.eAllContents().forEachRemaining(o -> taken.add(EcoreUtil.getID(o)));
        String stem = "layer-" + rule.getMeaning().getName().toLowerCase(Locale.ROOT).replace('_', '-');
        String id = stem;
        for (int n = 2; taken.contains(id); n++) {
            id = stem + "-" + n;
        }
        return id;
    }
}
