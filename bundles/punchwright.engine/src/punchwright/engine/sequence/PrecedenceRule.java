// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

/**
 * In each holding everything of one kind comes before everything of another, with the reason a person reads.
 *
 * @param before      kind that comes first; null for any
 * @param beforeTool  id of the tool that comes first; null for any
 * @param after       kind that comes later; null for any
 * @param afterTool   id of the tool that comes later; null for any
 * @param forms       what else must be so of two groups of forms
 * @param reason      why, one sentence
 */
public record PrecedenceRule(WorkKind before, String beforeTool, WorkKind after, String afterTool, FormOrder forms,
        String reason) {

    /** A rule between two kinds of work. */
    public static PrecedenceRule kinds(WorkKind before, WorkKind after, String reason) {
        return new PrecedenceRule(before, null, after, null, FormOrder.ANY, reason);
    }

    /** A rule between two tools, as an engineer adds it. */
    public static PrecedenceRule tools(String beforeTool, String afterTool, String reason) {
        return new PrecedenceRule(null, beforeTool, null, afterTool, FormOrder.ANY, reason);
    }

    /** A rule between forms. */
    public static PrecedenceRule forms(FormOrder order, String reason) {
        return new PrecedenceRule(WorkKind.FORM, null, WorkKind.FORM, null, order, reason);
    }

    boolean puts(ToolGroup first, ToolGroup later) {
        return fits(before, beforeTool, first) && fits(after, afterTool, later) && forms.puts(first, later);
    }

    /** Whether the rule gives way to one that says the opposite: height and side of forms are custom, no need. */
    boolean yields() {
        return forms == FormOrder.UP_FIRST || forms == FormOrder.LOW_FIRST;
    }

    private static boolean fits(WorkKind kind, String tool, ToolGroup group) {
        return (kind == null || kind == group.kind()) && (tool == null || tool.equals(group.use().tool().id()));
    }
}
