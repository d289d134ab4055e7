// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Point;
import punchwright.model.shop.Tool;
import punchwright.model.work.Part;
import punchwright.model.work.ToolWish;
import punchwright.model.work.WishKind;
import punchwright.model.work.WorkFactory;
import punchwright.model.work.WorkPackage;
import punchwright.ui.session.OpenFile;
import punchwright.ui.text.Texts;

/** Changes of a part's tool wishes, each one step of undo. To be used on the UI thread. */
public final class Wishes {

    private static final double NEAR_MM = 0.1;

    private final OpenFile file;
    private final Part part;

    /** Wishes of the part at the root of a file. */
    public Wishes(OpenFile file, Part part) {
        this.file = file;
        this.part = part;
    }

    /** The tool makes these features; a pin they had before goes, and so does a ban on the tool. */
    public boolean pin(Tool tool, List<Feature> features) {
        List<ToolWish> gone = new ArrayList<>(pinsOf(features));
        gone.addAll(bansOf(tool));
        List<ToolWish> made = new ArrayList<>();
        for (Feature feature : features) {
            ToolWish wish = wish(WishKind.PIN, tool);
            wish.setFeatureKind(feature.kind().name());
            wish.setXMm(feature.center().x());
            wish.setYMm(feature.center().y());
            made.add(wish);
        }
        return change(Texts.of("wish.pin", tool.getName()), gone, made);
    }

    /** The tool is not used for the part; pins of it go. */
    public boolean forbid(Tool tool) {
        if (!bansOf(tool).isEmpty()) {
            return false;
        }
        List<ToolWish> gone = part.getWishes().stream().filter(w -> w.getTool() == tool).toList();
        return change(Texts.of("wish.forbid", tool.getName()), gone, List.of(wish(WishKind.FORBID, tool)));
    }

    /** Takes wishes back. */
    public boolean release(List<ToolWish> wishes) {
        return change(Texts.of("wish.release"), wishes, List.of());
    }

    /** Pins of these features. */
    public List<ToolWish> pinsOf(List<Feature> features) {
        return part.getWishes().stream().filter(w -> w.getKind() == WishKind.PIN && features.stream().anyMatch(f -> means(w, f)))
                .toList();
    }

    private List<ToolWish> bansOf(Tool tool) {
        return part.getWishes().stream().filter(w -> w.getKind() == WishKind.FORBID && w.getTool() == tool).toList();
    }

    private static boolean means(ToolWish wish, Feature feature) {
        return feature.kind().name().equals(wish.getFeatureKind())
                && feature.center().distance(new Point(wish.getXMm(), wish.getYMm())) <= NEAR_MM;
    }

    private static ToolWish wish(WishKind kind, Tool tool) {
        ToolWish wish = WorkFactory.eINSTANCE.createToolWish();
        wish.setKind(kind);
        wish.setTool(tool);
        return wish;
    }

    private boolean change(String label, List<ToolWish> gone, List<ToolWish> made) {
        CompoundCommand command = new CompoundCommand(label);
        if (!gone.isEmpty()) {
            command.append(RemoveCommand.create(file.domain(), part, WorkPackage.Literals.PART__WISHES, gone));
        }
        if (!made.isEmpty()) {
            command.append(AddCommand.create(file.domain(), part, WorkPackage.Literals.PART__WISHES, made));
        }
        return !command.isEmpty() && file.run(command);
    }
}
