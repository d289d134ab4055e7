// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import punchwright.engine.drawing.LayerRules;
import punchwright.model.names.Names;
import punchwright.model.shop.LayerMeaning;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Library;
import punchwright.model.shop.ShopFactory;

/** The layer rules that the engineer keeps, for the engine; and the usual set as records to begin with. */
public final class ShopLayerRules {

    private static final List<String> ANY = List.of("*");

    private ShopLayerRules() {
    }

    /** The shop's rules; the usual ones when it keeps none. */
    public static LayerRules of(Library library) {
        return library.getLayerRules().isEmpty() ? LayerRules.USUAL : before(library.getLayerRules(), new LayerRules(List.of(),
                punchwright.engine.drawing.LayerMeaning.CUT));
    }

    /** A drawing's own rules, asked before others. Rules that say nothing are passed over. */
    public static LayerRules before(List<LayerRule> own, LayerRules others) {
        List<punchwright.engine.drawing.LayerRule> all = new ArrayList<>();
        own.forEach(rule -> add(all, rule));
        all.addAll(others.rules());
        return new LayerRules(all, others.otherwise());
    }

    private static void add(List<punchwright.engine.drawing.LayerRule> all, LayerRule rule) {
        boolean empty = rule.getLayerPatterns().isEmpty() && rule.getLineTypePatterns().isEmpty() && rule.getColour() == 0;
        if (empty || rule.getColour() < 0 || rule.getColour() > 255) {
            return;
        }
        for (String layer : patterns(rule.getLayerPatterns())) {
            for (String lineType : patterns(rule.getLineTypePatterns())) {
                all.add(new punchwright.engine.drawing.LayerRule(layer.strip(), lineType.strip(), rule.getColour(),
                        engine(rule.getMeaning())));
            }
        }
    }

    private static List<String> patterns(List<String> stated) {
        return stated.isEmpty() ? ANY : stated;
    }

    /** The engine's word for a meaning. */
    public static punchwright.engine.drawing.LayerMeaning engine(LayerMeaning meaning) {
        return punchwright.engine.drawing.LayerMeaning.valueOf(meaning.getName());
    }

    /** The model's word for a meaning. */
    public static LayerMeaning model(punchwright.engine.drawing.LayerMeaning meaning) {
        return LayerMeaning.get(meaning.name());
    }

    /** The usual rules as records with identifiers and names in a language; neighbours of one meaning become one record. */
    public static List<LayerRule> usual(Locale locale) {
        List<LayerRule> made = new ArrayList<>();
        for (punchwright.engine.drawing.LayerRule rule : LayerRules.USUAL.rules()) {
            boolean byLineType = !rule.lineTypePattern().equals("*");
            LayerMeaning meaning = model(rule.meaning());
            LayerRule last = made.isEmpty() ? null : made.get(made.size() - 1);
            if (last == null || last.getMeaning() != meaning || last.getLineTypePatterns().isEmpty() == byLineType) {
                last = record(meaning, byLineType, locale);
                made.add(last);
            }
            (byLineType ? last.getLineTypePatterns() : last.getLayerPatterns()).add(byLineType ? rule.lineTypePattern()
                    : rule.layerPattern());
        }
        return made;
    }

    private static LayerRule record(LayerMeaning meaning, boolean byLineType, Locale locale) {
        LayerRule rule = ShopFactory.eINSTANCE.createLayerRule();
        String id = meaning.getName().toLowerCase(Locale.ROOT).replace('_', '-');
        rule.setId("layer-" + id + (byLineType ? "-line-type" : ""));
        rule.setMeaning(meaning);
        rule.setName(Names.of(meaning, locale) + (byLineType ? ", " + Names.of(
                punchwright.model.shop.ShopPackage.Literals.LAYER_RULE__LINE_TYPE_PATTERNS, locale) : ""));
        return rule;
    }
}
