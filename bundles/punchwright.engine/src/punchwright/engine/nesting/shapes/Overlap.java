// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

/**
 * Whether two placed outlines overlap, exactly, and how badly, roughly.
 *
 * <p>How badly: over all pairs of filling circles the depth by which they overlap (continued smoothly to small positive values
 * where they do not) times the smaller radius, as a length by the square root, times the mean size of the two shapes. It
 * falls steadily as shapes are pulled apart, which the overlapping area of long thin shapes does not.
 */
final class Overlap {

    /** Circles compared before edges: the largest of each. */
    private static final int QUICK = 4;

    private int[] near = new int[64];

    /** 0 when the shapes do not overlap (touching within a hair allowed), else a measure; counting stops above {@code most}. */
    double of(Outline moving, double mx, double my, Outline fixed, double fx, double fy, double softness, double size,
            double most) {
        double dx = mx - fx;
        double dy = my - fy;
        if (moving.minX + dx >= fixed.maxX || moving.maxX + dx <= fixed.minX || moving.minY + dy >= fixed.maxY
                || moving.maxY + dy <= fixed.minY) {
            return 0;
        }
        if (!polesMeet(moving, fixed, dx, dy) && !edgesMeet(moving, fixed, dx, dy) && !inside(moving, fixed, dx, dy)) {
            return 0;
        }
        double mostSum = most / size;
        return measure(moving, fixed, dx, dy, softness, mostSum * mostSum) * size;
    }

    private static boolean polesMeet(Outline m, Outline f, double dx, double dy) {
        int mn = Math.min(QUICK, m.poleR.length);
        int fn = Math.min(QUICK, f.poleR.length);
        for (int i = 0; i < mn; i++) {
            double x = m.poleX[i] + dx;
            double y = m.poleY[i] + dy;
            double r = m.poleR[i];
            for (int j = 0; j < fn; j++) {
                double ex = x - f.poleX[j];
                double ey = y - f.poleY[j];
                double s = r + f.poleR[j];
                if (ex * ex + ey * ey < s * s * 0.9999) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Only edges that reach into the common part of the two boxes are compared. */
    private boolean edgesMeet(Outline m, Outline f, double dx, double dy) {
        double lx = Math.max(m.minX + dx, f.minX);
        double hx = Math.min(m.maxX + dx, f.maxX);
        double ly = Math.max(m.minY + dy, f.minY);
        double hy = Math.min(m.maxY + dy, f.maxY);
        int n = 0;
        if (near.length < f.ax.length) {
            near = new int[2 * f.ax.length];
        }
        for (int j = 0; j < f.ax.length; j++) {
            if (!(f.ax[j] < lx && f.bx[j] < lx || f.ax[j] > hx && f.bx[j] > hx || f.ay[j] < ly && f.by[j] < ly
                    || f.ay[j] > hy && f.by[j] > hy)) {
                near[n++] = j;
            }
        }
        for (int i = 0; n > 0 && i < m.insetAx.length; i++) {
            double ax = m.insetAx[i] + dx;
            double ay = m.insetAy[i] + dy;
            double bx = m.insetBx[i] + dx;
            double by = m.insetBy[i] + dy;
            if (!(ax < lx && bx < lx || ax > hx && bx > hx || ay < ly && by < ly || ay > hy && by > hy)
                    && crosses(ax, ay, bx, by, f, n)) {
                return true;
            }
        }
        return false;
    }

    private boolean crosses(double ax, double ay, double bx, double by, Outline f, int n) {
        double ex = bx - ax;
        double ey = by - ay;
        for (int k = 0; k < n; k++) {
            int j = near[k];
            double cx = f.ax[j] - ax;
            double cy = f.ay[j] - ay;
            double qx = f.bx[j] - ax;
            double qy = f.by[j] - ay;
            double s1 = ex * cy - ey * cx;
            double s2 = ex * qy - ey * qx;
            if (s1 * s2 <= 0) {
                double gx = qx - cx;
                double gy = qy - cy;
                double s3 = gy * cx - gx * cy;
                double s4 = s3 + gx * ey - gy * ex;
                if (s3 * s4 <= 0) {
                    return true;
                }
            }
        }
        return false;
    }

    /** One wholly inside the other, where no edges meet. */
    private static boolean inside(Outline m, Outline f, double dx, double dy) {
        return f.contains(m.insetAx[0] + dx, m.insetAy[0] + dy) || m.contains(f.ax[0] - dx, f.ay[0] - dy);
    }

    /** In single precision: only how badly is told here, not whether. */
    private static double measure(Outline m, Outline f, double dx, double dy, double softness, double mostSum) {
        float sum = 0;
        float most = (float) Math.min(mostSum, Float.MAX_VALUE);
        float soft = (float) softness;
        float soft2 = soft * soft;
        float[] fx = f.poleX;
        float[] fy = f.poleY;
        float[] fr = f.poleR;
        for (int i = 0; i < m.poleR.length && (i == 0 || sum < most); i++) {
            float x = m.poleX[i] + (float) dx;
            float y = m.poleY[i] + (float) dy;
            float r = m.poleR[i];
            for (int j = 0; j < fr.length; j++) {
                float ex = x - fx[j];
                float ey = y - fy[j];
                float q = fr[j];
                float d = r + q - (float) Math.sqrt(ex * ex + ey * ey);
                float depth = d >= soft ? d : soft2 / (2 * soft - d);
                sum += depth * (r < q ? r : q);
            }
        }
        return Math.sqrt(sum);
    }
}
