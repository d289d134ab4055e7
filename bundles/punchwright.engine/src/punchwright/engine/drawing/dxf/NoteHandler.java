// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** TEXT, ATTRIB, MTEXT and POINT (group codes: DXF Reference, "ENTITIES"). */
final class NoteHandler {

    private NoteHandler() {
    }

    /** One line of text, in the plane of the entity. */
    static void text(Entity e, EntityTarget target) {
        add(e, target, e.plane(), TextContent.ofLine(e.text(1, "")).strip(), direction(e.number(50, 0)));
    }

    /** Several lines of text, in the world's coordinates; group 11 gives the direction, else group 50 the angle. */
    static void lines(Entity e, EntityTarget target) {
        Vec3 along = e.has(11) ? e.point(11).unit() : direction(e.number(50, 0));
        add(e, target, Frame.IDENTITY, TextContent.ofLines(e.joined(3) + e.joined(1)), along);
    }

    static void point(Entity e, EntityTarget target) {
        target.block().notes.add(new DrawnNote(target.style(e), true, "", e.point(10), Vec3.ZERO, Vec3.ZERO));
    }

    private static Vec3 direction(double angleDeg) {
        double rad = Math.toRadians(angleDeg);
        return new Vec3(Math.cos(rad), Math.sin(rad), 0);
    }

    private static void add(Entity e, EntityTarget target, Frame plane, String text, Vec3 along) {
        Vec3 up = Vec3.UP.cross(along).times(e.number(40, 0));
        DrawnNote note = new DrawnNote(target.style(e), false, text, e.point(10), along, up);
        target.block().notes.add(note.mapped(plane, note.style()));
    }
}
