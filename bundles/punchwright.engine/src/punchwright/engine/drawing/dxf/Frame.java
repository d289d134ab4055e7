// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/**
 * An affine map of space: the images of the three axes and of the origin. Holds the plane of an entity (its extrusion
 * direction) and the place of a block.
 */
record Frame(Vec3 ax, Vec3 ay, Vec3 az, Vec3 origin) {

    static final Frame IDENTITY = new Frame(new Vec3(1, 0, 0), new Vec3(0, 1, 0), Vec3.UP, Vec3.ZERO);

    private static final double NEAR_Z = 1.0 / 64;

    /**
     * The plane of an entity with this extrusion direction, by the rule for the arbitrary axis (DXF Reference, "Arbitrary
     * Axis Algorithm"). The zero vector counts as upright.
     */
    static Frame ofExtrusion(Vec3 direction) {
        Vec3 n = direction.unit();
        if (n.x() == 0 && n.y() == 0 && n.z() >= 0) {
            return IDENTITY;
        }
        Vec3 side = Math.abs(n.x()) < NEAR_Z && Math.abs(n.y()) < NEAR_Z ? new Vec3(0, 1, 0) : Vec3.UP;
        Vec3 ax = side.cross(n).unit();
        return new Frame(ax, n.cross(ax).unit(), n, Vec3.ZERO);
    }

    static Frame translation(Vec3 by) {
        return new Frame(IDENTITY.ax, IDENTITY.ay, IDENTITY.az, by);
    }

    /** Scaled, then turned about z, then shifted. */
    static Frame placement(Vec3 scale, double angleDeg, Vec3 shift) {
        double c = punchwright.engine.geometry.Angles.cosDeg(angleDeg);
        double s = punchwright.engine.geometry.Angles.sinDeg(angleDeg);
        return new Frame(new Vec3(c * scale.x(), s * scale.x(), 0), new Vec3(-s * scale.y(), c * scale.y(), 0),
                new Vec3(0, 0, scale.z()), shift);
    }

    Vec3 vector(Vec3 v) {
        return ax.times(v.x()).plus(ay.times(v.y())).plus(az.times(v.z()));
    }

    Vec3 point(Vec3 p) {
        return this == IDENTITY ? p : vector(p).plus(origin);
    }

    /** The map that does {@code first} and then this. */
    Frame after(Frame first) {
        return this == IDENTITY ? first : first == IDENTITY ? this
                : new Frame(vector(first.ax), vector(first.ay), vector(first.az), point(first.origin));
    }
}
