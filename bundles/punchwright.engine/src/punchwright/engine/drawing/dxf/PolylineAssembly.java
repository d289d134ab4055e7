// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

/** Gathers the vertices of an old POLYLINE, which follow it as entities of their own up to SEQEND. */
final class PolylineAssembly {

    private static final int CLOSED = 1;
    private static final int IN_SPACE = 8;
    private static final int MESHES = 16 | 64;
    private static final int CONTROL_FRAME = 16;

    private final List<BulgeVertex> vertices = new ArrayList<>();
    private boolean open;
    private boolean broken;
    private int flags;
    private double elevation;
    private Frame plane;
    private Style style;
    private long place;

    void start(Entity e, EntityTarget target) {
        finish(target);
        open = true;
        broken = false;
        flags = e.integer(70, 0);
        elevation = e.number(30, 0);
        plane = e.plane();
        style = target.style(e);
        place = e.place();
        vertices.clear();
    }

    void vertex(Entity e) {
        if ((e.integer(70, 0) & CONTROL_FRAME) == 0) {
            double z = (flags & IN_SPACE) != 0 ? e.number(30, 0) : elevation;
            vertices.add(new BulgeVertex(new Vec3(e.number(10, 0), e.number(20, 0), z), e.number(42, 0)));
        }
    }

    /** A vertex could not be read: the whole polyline is left out. */
    void breakUp() {
        broken = true;
    }

    boolean isOpen() {
        return open;
    }

    void finish(EntityTarget target) {
        if (open && !broken && (flags & MESHES) == 0) {
            boolean closed = (flags & CLOSED) != 0;
            Frame frame = (flags & IN_SPACE) != 0 ? Frame.IDENTITY : plane;
            target.add("POLYLINE", style, BulgeVertex.edges(vertices, closed, frame), closed, place);
        }
        open = false;
    }
}
