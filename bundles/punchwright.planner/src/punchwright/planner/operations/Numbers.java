// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

/** Numbers among the options of a call; one that makes no sense is a {@link UsageException} that says what would. */
final class Numbers {

    private Numbers() {
    }

    static int count(Call call, String option, int otherwise) {
        String text = call.option(option, null);
        if (text == null) {
            return otherwise;
        }
        try {
            int n = Integer.parseInt(text.strip());
            if (n >= 1) {
                return n;
            }
        } catch (NumberFormatException e) {
            // said below, with the numbers that are too small
        }
        throw new UsageException("--" + option + " wants a whole number from 1; given: " + text);
    }

    static double above0(Call call, String option, double otherwise) {
        String text = call.option(option, null);
        if (text == null) {
            return otherwise;
        }
        double value = number(text);
        if (value > 0 && Double.isFinite(value)) {
            return value;
        }
        throw new UsageException("--" + option + " wants a number above 0, as in 12 or 4.5; given: " + text);
    }

    static double atLeast0(String what, String text) {
        double value = number(text);
        if (value >= 0 && Double.isFinite(value)) {
            return value;
        }
        throw new UsageException(what + " wants a number of at least 0, as in 12 or 4.5; given: " + text);
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
