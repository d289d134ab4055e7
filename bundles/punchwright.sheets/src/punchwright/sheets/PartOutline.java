// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.util.List;

/**
 * The drawn edges of a part for pictures: closed polylines in the part's own coordinates, mm, each as x0, y0, x1, y1, ...;
 * the outer edge first. Arcs are given finely enough for print (0.2 mm on paper).
 */
public record PartOutline(List<double[]> contours) {

    public PartOutline {
        contours = List.copyOf(contours);
    }
}
