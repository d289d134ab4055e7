// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.theme;

import java.util.Locale;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.ImageRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.swt.graphics.Image;

/** Our own signs, drawn as SVG, loaded once. */
public enum Icons {
    SHOP, MACHINE, TOOL, HOLDER, MATERIAL, STOCK, RATES, PART, ASSEMBLY, ORDER, PLAN, DRAWING, WORKBOOK, ERROR, WARNING,
            NOTE, MAKE_PLAN,
    EXPORT, IMPORT, FIT, ZOOM_IN, ZOOM_OUT, FOLDER, ADD, REMOVE, DUPLICATE, FINDINGS, START, EXPLORER, BALLOON, REVERT,
    PURCHASED, UP, DOWN, LAYOUT, NEST, FILL, STOP, TURN, TURN_BACK, LOCK, RIGHT;

    private static final String BUNDLE = "punchwright.ui";

    /** Path in the bundle. */
    public String path() {
        return "icons/" + name().toLowerCase(Locale.ROOT) + ".svg";
    }

    /** For actions and parts. */
    public ImageDescriptor descriptor() {
        return ResourceLocator.imageDescriptorFromBundle(BUNDLE, path()).orElseGet(ImageDescriptor::getMissingImageDescriptor);
    }

    /** Shared image; never disposed by the caller. */
    public Image image() {
        ImageRegistry images = JFaceResources.getImageRegistry();
        String key = BUNDLE + "/" + path();
        if (images.getDescriptor(key) == null) {
            images.put(key, descriptor());
        }
        return images.get(key);
    }
}
