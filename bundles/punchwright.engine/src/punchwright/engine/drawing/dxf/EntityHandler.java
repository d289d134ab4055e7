// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** Turns the tags of one type of entity into curves. */
@FunctionalInterface
interface EntityHandler {

    void read(Entity e, EntityTarget target);
}
