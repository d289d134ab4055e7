// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * What can be wrong with a file of the workspace. The texts stand in {@code files.properties} and its translations under
 * {@code CODE.message} and {@code CODE.remedy}; argument 0 is always the file, further ones as the text needs them.
 */
public enum FileProblem {
    /** The folder or file is not there. */
    MISSING("PW-F-001"),
    /** The file is empty. */
    EMPTY("PW-F-002"),
    /** The file is no text of our form: binary, truncated or damaged. Arguments: cause. */
    DAMAGED("PW-F-003"),
    /** The file is of a newer format. Arguments: its format, the newest format read. */
    NEWER_FORMAT("PW-F-004"),
    /** The file carries a document type declaration, which may pull in foreign files. */
    DOCTYPE("PW-F-005"),
    /** A path leaves the workspace. Arguments: the path. */
    OUTSIDE("PW-F-006"),
    /** The folder or file cannot be written. Arguments: cause. */
    READ_ONLY("PW-F-007"),
    /** The disk is full. Arguments: cause. */
    DISK_FULL("PW-F-008"),
    /** Writing failed for another reason. Arguments: cause. */
    WRITE_FAILED("PW-F-009"),
    /** Reading failed. Arguments: cause. */
    READ_FAILED("PW-F-010"),
    /** Another program has the workspace open for writing. */
    LOCKED("PW-F-011"),
    /** The file was changed by another program since it was read. */
    CHANGED_OUTSIDE("PW-F-012"),
    /** The objects cannot be written as they are. Arguments: cause. */
    NOT_WRITABLE("PW-F-013"),
    /** The file holds another kind of object. Arguments: expected, found. */
    WRONG_ROOT("PW-F-014"),
    /** The workspace is open for reading only. */
    OPEN_FOR_READING("PW-F-015"),
    /** A reference inside the file leads nowhere. Arguments: cause. */
    DANGLING("PW-F-016"),
    /** An object's identifier cannot be a file name. Arguments: identifier. */
    BAD_ID("PW-F-017"),
    /** The file was migrated to today's format. Arguments: from, to, what was done. A note, not an error. */
    MIGRATED("PW-F-018"),
    /** Two files define the same identifier. Arguments: identifier, other file. */
    DUPLICATE("PW-F-019"),
    /** The file is larger than is read. Arguments: size in MB, limit in MB. */
    TOO_LARGE("PW-F-020");

    private final String code;

    FileProblem(String code) {
        this.code = code;
    }

    /** Stable code, never reused for another meaning. */
    public String code() {
        return code;
    }

    String text(String kind, Locale locale, Object... arguments) {
        ResourceBundle texts = ResourceBundle.getBundle("punchwright.model.files.files", locale,
                FileProblem.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        return new MessageFormat(texts.getString(code + "." + kind), locale).format(arguments);
    }
}
