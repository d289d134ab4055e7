// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.feature.Feature;

/**
 * One feature (or a piece of it) made by one tool in a known number of hits.
 *
 * @param number           from 1, unique in the part
 * @param feature          what is made
 * @param tool             what makes it
 * @param kind             how
 * @param hits             in part coordinates, in a sensible order along the path
 * @param joints           micro-joints left on purpose
 * @param forceN           largest punching force of a hit, with the shear of the punch
 * @param strippingN       largest stripping force of a hit
 * @param clearanceNeedMm  total die clearance by the material's rule
 * @param clearanceMm      total die clearance chosen from those on hand
 * @param why              why this tool, in a short sentence
 */
public record Operation(int number, Feature feature, Tool tool, OperationKind kind, List<PartHit> hits,
        List<MicroJoint> joints, double forceN, double strippingN, double clearanceNeedMm, double clearanceMm, String why) {

    public Operation {
        hits = List.copyOf(hits);
        joints = List.copyOf(joints);
    }
}
