// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.tooling.OperationList;

/** One part: what was asked, what was recognised, and how it is made. */
public record PartPlan(PartDemand demand, FeatureSet features, OperationList operations) {
}
