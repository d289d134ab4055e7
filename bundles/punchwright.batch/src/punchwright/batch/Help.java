// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.util.List;
import java.util.Locale;

import punchwright.planner.operations.ExitCode;
import punchwright.planner.operations.Operations;
import punchwright.planner.operations.ShopOperation;

/** Help texts, made from the registry so that they are true. */
final class Help {

    private Help() {
    }

    static String all(Operations operations) {
        StringBuilder text = new StringBuilder(
                "Usage: punchwright batch [--workspace FOLDER] OPERATION [WORD...] [--option VALUE...]\n\n");
        for (ShopOperation o : operations.all()) {
            text.append(String.format(Locale.ROOT, "  %-8s %s%n", o.name(), o.summary()));
        }
        text.append("\n  OPERATION --help tells more; --version prints the version; --quiet prints no progress.\n\nExit codes:");
        String[] meanings = { "done", "done, with errors among the findings", "the words make no sense",
            "a file or record is missing, unreadable or cannot be written", "a fault of the program" };
        for (ExitCode code : ExitCode.values()) {
            text.append(code.number() == 0 ? " " : ", ").append(code.number()).append(' ').append(meanings[code.number()]);
        }
        return text.append(".\n").toString();
    }

    static String of(ShopOperation o, List<String> words) {
        return "Usage: punchwright batch [--workspace FOLDER] " + (o.name() + " " + o.usage()).strip() + "\n\n" + o.summary()
                + ".\n" + o.details(words) + RecordSchema.described(o.name());
    }
}
