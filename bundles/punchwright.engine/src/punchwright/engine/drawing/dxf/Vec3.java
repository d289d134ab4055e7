// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A point or vector in space, in drawing units. */
record Vec3(double x, double y, double z) {

    static final Vec3 ZERO = new Vec3(0, 0, 0);
    static final Vec3 UP = new Vec3(0, 0, 1);

    Vec3 plus(Vec3 o) {
        return new Vec3(x + o.x, y + o.y, z + o.z);
    }

    Vec3 minus(Vec3 o) {
        return new Vec3(x - o.x, y - o.y, z - o.z);
    }

    Vec3 times(double f) {
        return new Vec3(x * f, y * f, z * f);
    }

    Vec3 cross(Vec3 o) {
        return new Vec3(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double norm() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** Length one; the zero vector stays. */
    Vec3 unit() {
        double n = norm();
        return n == 0 ? this : times(1 / n);
    }
}
