// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.picture;

import java.awt.Color;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.util.ArrayList;
import java.util.List;

/**
 * Colours for tools that colour-blind people tell apart: Okabe and Ito, "Color Universal Design" (2008), black left for part
 * edges and yellow darkened for lines on white. After seven they repeat; the balloon number is the identity.
 */
final class Palette {

    private static final int[] OKABE_ITO = {0x0072B2, 0xD55E00, 0x009E73, 0xCC79A7, 0xE69F00, 0x56B4E9, 0xB0A000};

    private Palette() {
    }

    /** All colours of a picture: white, the given ones, lines and grounds. */
    static IndexColorModel colours(Color... inks) {
        List<Color> all = new ArrayList<>(List.of(Color.WHITE));
        all.addAll(List.of(inks));
        for (int balloon = 1; balloon <= OKABE_ITO.length; balloon++) {
            all.add(line(balloon));
            all.add(ground(balloon));
        }
        int[] rgb = all.stream().mapToInt(Color::getRGB).toArray();
        return new IndexColorModel(8, rgb.length, rgb, 0, false, -1, DataBuffer.TYPE_BYTE);
    }

    static Color line(int balloon) {
        return new Color(OKABE_ITO[Math.floorMod(balloon - 1, OKABE_ITO.length)]);
    }

    /** The same, mixed with white. */
    static Color ground(int balloon) {
        Color c = line(balloon);
        return new Color(mix(c.getRed()), mix(c.getGreen()), mix(c.getBlue()));
    }

    /** Whether the balloon's colour is a repeated one and needs a second mark. */
    static boolean repeated(int balloon) {
        return balloon > OKABE_ITO.length;
    }

    private static int mix(int channel) {
        return (int) Math.round(channel * 0.3 + 255 * 0.7);
    }
}
