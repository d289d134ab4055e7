// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.List;

/** One or two outlines of a piece that are repeated together. */
final class Cluster {

    /** A member: number of the turn, and its reference point. */
    record Member(int turn, Outline outline, double x, double y) {
    }

    private final List<Member> members;
    private final double minX;
    private final double minY;
    private final double maxX;
    private final double maxY;

    Cluster(List<Member> members) {
        this.members = List.copyOf(members);
        minX = members.stream().mapToDouble(m -> m.x + m.outline.minX).min().orElseThrow();
        minY = members.stream().mapToDouble(m -> m.y + m.outline.minY).min().orElseThrow();
        maxX = members.stream().mapToDouble(m -> m.x + m.outline.maxX).max().orElseThrow();
        maxY = members.stream().mapToDouble(m -> m.y + m.outline.maxY).max().orElseThrow();
    }

    static Cluster single(Piece piece, int turn) {
        return new Cluster(List.of(new Member(turn, piece.turns[turn], 0, 0)));
    }

    Cluster with(Piece piece, int turn, double x, double y) {
        List<Member> more = new ArrayList<>(members);
        more.add(new Member(turn, piece.turns[turn], x, y));
        return new Cluster(more);
    }

    int size() {
        return members.size();
    }

    Member member(int i) {
        return members.get(i);
    }

    Outline outline(int i) {
        return members.get(i).outline;
    }

    double x(int i) {
        return members.get(i).x;
    }

    double y(int i) {
        return members.get(i).y;
    }

    double minX() {
        return minX;
    }

    double minY() {
        return minY;
    }

    double maxX() {
        return maxX;
    }

    double maxY() {
        return maxY;
    }

    /** Least and largest extent along a direction of length 1. */
    double[] extent(double ux, double uy) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Member m : members) {
            for (int i = 0; i < m.outline.ax.length; i++) {
                double along = (m.x + m.outline.ax[i]) * ux + (m.y + m.outline.ay[i]) * uy;
                least = Math.min(least, along);
                most = Math.max(most, along);
            }
        }
        return new double[] {least, most};
    }

    double boxArea() {
        return (maxX - minX) * (maxY - minY);
    }
}
