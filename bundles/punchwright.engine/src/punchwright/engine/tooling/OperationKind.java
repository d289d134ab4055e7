// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/** How a tool makes a feature. */
public enum OperationKind {
    SINGLE, SEVERAL, NIBBLING, SLITTING, CLUSTER, FORMING
}
