// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import punchwright.engine.feature.OutlineDetail;
import punchwright.engine.geometry.Point;

/** A detail of the outline as it was meant; sizes as in {@link OutlineDetail}. */
public record TrueDetail(OutlineDetail.Kind kind, Point place, double lengthMm, double depthMm, double radiusMm) {
}
