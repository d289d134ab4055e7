// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.press.WebRules;

/** Webs between openings and from openings to the part's edge against the least web; one warning for each opening at most. */
final class WebCheck {

    private static final double TOUCHING_MM = 0.02;

    private final ToolingJob job;
    private final NeighbourWayOut neighbours;
    private final List<Feature> openings;
    private final List<Geometry> lines;
    private final BoxIndex index;

    WebCheck(ToolingJob job) {
        this.job = job;
        neighbours = new NeighbourWayOut(job);
        openings = job.features().features().stream().filter(Feature::isOpening).toList();
        lines = new ArrayList<>(openings.stream().map(f -> (Geometry) Areas.of(f.contour()).getExteriorRing()).toList());
        index = new BoxIndex(openings.stream().map(f -> f.contour().bounds()).toList());
    }

    List<Finding> findings() {
        double least = WebRules.leastWebMm(job.thicknessMm());
        IndexedFacetDistance outer = new IndexedFacetDistance(Areas.of(job.features().shape().outer()).getExteriorRing());
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < openings.size(); i++) {
            double web = Math.min(nearest(i, least), near(i, least) ? outer.distance(lines.get(i)) : least);
            String subject = FeatureNames.subject(job.features().part(), openings.get(i));
            if (web < TOUCHING_MM) {
                findings.add(Finding.at(openings.get(i).center(), ToolingReason.NO_WEB, subject, web)
                        .with(neighbours.ofWeb(openings.get(i))));
            } else if (!WebRules.check(subject, web, job.thicknessMm()).isEmpty()) {
                findings.add(WebRules.check(subject, web, job.thicknessMm()).getFirst().with(neighbours.ofWeb(openings.get(i))));
            }
        }
        return findings;
    }

    /** Whether an opening drawn otherwise keeps the least web to all others and to the part's edge. */
    static boolean leavesWebs(ToolingJob job, Feature was, Feature is) {
        double least = WebRules.leastWebMm(job.thicknessMm());
        Geometry line = Areas.of(is.contour());
        return Areas.of(job.features().shape().outer()).getExteriorRing().distance(line) >= least - 1e-6
                && job.features().features().stream().filter(f -> f.isOpening() && f.number() != was.number())
                        .filter(f -> f.contour().bounds().grown(least).intersects(is.contour().bounds()))
                        .noneMatch(f -> Areas.of(f.contour()).distance(line) < least - 1e-6);
    }

    /** Whether some piece of the outer contour has its box near the opening. */
    private boolean near(int i, double least) {
        Bounds b = openings.get(i).contour().bounds().grown(least);
        return job.features().shape().outer().segments().stream().anyMatch(s -> s.bounds().intersects(b));
    }

    private double nearest(int i, double least) {
        double[] nearest = { least };
        Bounds b = openings.get(i).contour().bounds().grown(least);
        index.query(b, j -> {
            if (j != i) {
                nearest[0] = Math.min(nearest[0], new IndexedFacetDistance(lines.get(i)).distance(lines.get(j)));
            }
        });
        return nearest[0];
    }
}
