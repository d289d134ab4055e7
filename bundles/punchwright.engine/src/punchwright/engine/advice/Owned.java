// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Tool;

/** What the shop owns, today or with one addition. */
record Owned(List<Tool> tools, List<Holder> holders, Addition addition) {

    static Owned today(AdviceJob job) {
        return new Owned(job.tools(), job.holders(), null);
    }

    static Owned with(AdviceJob job, Addition a) {
        return new Owned(a.tool() == null ? job.tools() : tools(job.tools(), a.tool()),
                a.holder() == null ? job.holders() : holders(job.holders(), a.holder()), a);
    }

    private static List<Tool> tools(List<Tool> owned, Tool more) {
        List<Tool> all = new ArrayList<>(owned.stream().map(t -> t.id().equals(more.id()) ? more : t).toList());
        if (!all.contains(more)) {
            all.add(more);
        }
        return all;
    }

    private static List<Holder> holders(List<Holder> owned, Holder more) {
        List<Holder> all = new ArrayList<>(owned.stream().map(h -> h.id().equals(more.id()) ? more : h).toList());
        if (!all.contains(more)) {
            all.add(more);
        }
        return all;
    }

    /** The machine, with the option where the addition is one of it. */
    Machine machine(Machine m) {
        return addition != null && addition.machine() != null && addition.machine().id().equals(m.id()) ? addition.machine() : m;
    }
}
