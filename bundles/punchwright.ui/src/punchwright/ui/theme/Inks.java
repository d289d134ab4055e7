// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.theme;

import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.ui.PlatformUI;

/** Colours of the present theme. Colours need no disposal. */
public final class Inks {

    private Inks() {
    }

    /** The colour of an ink in the present theme. */
    public static Color of(Ink ink) {
        if (PlatformUI.isWorkbenchRunning()) {
            ColorRegistry colours = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry();
            if (colours.hasValueFor(ink.key())) {
                return colours.get(ink.key());
            }
        }
        return new Color(ink.plain());
    }

    /** A mix of two inks: {@code share} of the first, the rest of the second. */
    public static Color mixed(Ink first, Ink second, double share) {
        RGB a = of(first).getRGB();
        RGB b = of(second).getRGB();
        return new Color(mix(a.red, b.red, share), mix(a.green, b.green, share), mix(a.blue, b.blue, share));
    }

    private static int mix(int a, int b, double share) {
        return (int) Math.round(a * share + b * (1 - share));
    }
}
