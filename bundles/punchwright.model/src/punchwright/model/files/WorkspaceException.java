// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

/** One thing that went wrong with one file, with its cause and the way out. The message holds all three. */
public final class WorkspaceException extends IOException {

    private static final long serialVersionUID = 1L;

    private final FileProblem problem;
    private final transient Path file;
    private final transient Object[] arguments;

    WorkspaceException(FileProblem problem, Path file, Throwable cause, Object... more) {
        super(problem.code(), cause);
        this.problem = problem;
        this.file = file;
        this.arguments = new Object[more.length + 1];
        this.arguments[0] = file.toString();
        System.arraycopy(more, 0, this.arguments, 1, more.length);
    }

    /** What kind of trouble it is. */
    public FileProblem problem() {
        return problem;
    }

    /** The file or folder concerned. */
    public Path file() {
        return file;
    }

    /** What is the case, in the given language. */
    public String message(Locale locale) {
        return problem.text("message", locale, arguments);
    }

    /** The way out, in the given language. */
    public String remedy(Locale locale) {
        return problem.text("remedy", locale, arguments);
    }

    @Override
    public String getMessage() {
        return message(Locale.ENGLISH) + " " + remedy(Locale.ENGLISH);
    }
}
