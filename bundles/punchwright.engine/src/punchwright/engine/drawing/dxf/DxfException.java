// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.IOException;

import punchwright.engine.finding.Finding;

/** A file that gives no drawing at all; the finding says why and where. */
public final class DxfException extends IOException {

    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    DxfException(Finding finding) {
        super(finding.message());
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
