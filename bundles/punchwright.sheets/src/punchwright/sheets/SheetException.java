// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.io.IOException;
import java.nio.file.Path;

/** A workbook could not be written. The message names the file, the cause and the way out; no file was harmed. */
public final class SheetException extends IOException {

    private static final long serialVersionUID = 1L;

    private final String file;
    private final String remedy;

    public SheetException(Path file, String cause, String remedy, Throwable thrown) {
        super(file + ": " + cause + " " + remedy, thrown);
        this.file = file.toString();
        this.remedy = remedy;
    }

    /** The file concerned. */
    public String file() {
        return file;
    }

    /** The way out. */
    public String remedy() {
        return remedy;
    }
}
