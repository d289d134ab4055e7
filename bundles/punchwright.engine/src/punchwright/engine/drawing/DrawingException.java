// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.finding.Finding;

/** A drawing or a set of parameters that gives no part. The finding names the file, the place and the way out. */
public final class DrawingException extends Exception {

    private static final long serialVersionUID = 1L;

    private final transient Finding finding;
    private final transient List<Finding> others;

    public DrawingException(Finding finding) {
        this(finding, List.of());
    }

    /** @param others what else was noticed on the way */
    public DrawingException(Finding finding, List<Finding> others) {
        super(finding.subject() + ": " + finding.message());
        this.finding = finding;
        this.others = List.copyOf(others);
    }

    public Finding finding() {
        return finding;
    }

    /** What else was noticed, without {@link #finding()}. */
    public List<Finding> others() {
        return others;
    }
}
