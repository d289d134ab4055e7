// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import punchwright.model.plan.Plan;

/**
 * A plan's file that was read or written beside the thread that owns the workspace. It is no part of the workspace until
 * {@link Workspace#take(PlanFile)} takes it in; its references lead to the workspace from then on.
 */
public final class PlanFile {

    private final WorkspaceResource resource;

    PlanFile(WorkspaceResource resource) {
        this.resource = resource;
    }

    WorkspaceResource resource() {
        return resource;
    }

    /** The plan; references out of it are not resolved before it is taken in. */
    public Plan plan() {
        return (Plan) resource.getContents().get(0);
    }
}
