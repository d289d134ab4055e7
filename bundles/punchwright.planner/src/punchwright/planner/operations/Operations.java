// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.List;
import java.util.Optional;

/** The registry: every operation, in the order in which help lists them. */
public final class Operations {

    private final List<ShopOperation> all;

    /**
     * @param reports        writers of spreadsheets
     * @param programVersion stated in every plan
     */
    public Operations(Reports reports, String programVersion) {
        all = List.of(new CheckOperation(), new ImportOperation(), new PlanOperation(programVersion), new LayoutOperation(),
                new ExportOperation(reports), new DrawOperation(), new WeighOperation(), new AdviseOperation(),
                new CalcOperation(),
                new DemoOperation(reports, programVersion));
    }

    public List<ShopOperation> all() {
        return all;
    }

    public Optional<ShopOperation> named(String name) {
        return all.stream().filter(o -> o.name().equals(name)).findFirst();
    }
}
