// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import org.eclipse.swt.graphics.GC;

/**
 * Takes the hand before the picture does: what it says it has taken neither moves the paper nor selects a hit. Places in mm on the
 * paper; {@code state} is the state mask of the event. It draws over the picture.
 */
public interface SheetHand {

    /** Leaves everything to the picture. */
    SheetHand NONE = new SheetHand() {
    };

    /** The left button goes down; says whether what follows up to its release is taken. */
    default boolean down(double x, double y, int state) {
        return false;
    }

    /** The pointer moves with the button down that was taken. */
    default void drag(double x, double y, int state) {
    }

    /** The button that was taken is released. */
    default void drop(double x, double y, int state) {
    }

    /** A key goes down; says whether it is taken. */
    default boolean key(int keyCode, int state) {
        return false;
    }

    /** Draws over the picture. */
    default void paint(GC gc, Viewport view) {
    }
}
