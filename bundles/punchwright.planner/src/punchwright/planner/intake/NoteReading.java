// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import punchwright.model.shop.Material;

/**
 * What the notes of a drawing may say about material, thickness and quantity: offered to the person, never taken by itself.
 * Forms as drawings carry them [common practice, no source].
 */
public final class NoteReading {

    private static final String FIGURE = "(\\d{1,4}(?:[.,]\\d{1,4})?)";
    private static final Pattern THICKNESS = Pattern.compile(
            "(?<![\\p{L}\\d])(?:t|s|thk|thickness|dicke|blechdicke|st\u00e4rke|blechst\u00e4rke)\\s*[.:=]?\\s*" + FIGURE
                    + "(?![\\d.,]*\\d|\\s*\u00b0|\\s*[xX\u00d7])"
            + "|(?<![\\d.,])" + FIGURE + "\\s*mm\\s*(?:thk|thick|dick|stark)(?!\\p{L})",
                    Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern QUANTITY = Pattern.compile(
            "(?<![\\p{L}\\d])(?:qty|quantity|pcs|pieces|stk|st\u00fcck|st\u00fcckzahl|anzahl|menge)"
            + "\\s*[.:=]?\\s*(\\d{1,6})(?![.,]?\\d)"
            + "|(?<![\\p{L}\\d.,])(\\d{1,6})\\s*(?:x\\b|off\\b|pcs|pieces|stk|st\u00fcck)(?!\\s*\\d)",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

    private NoteReading() {
    }

    /** The thickness in mm, when all notes that name one agree. */
    public static OptionalDouble thicknessMm(List<String> notes) {
        List<Double> said = figures(THICKNESS, notes, s -> Double.valueOf(s.replace(',', '.'))).filter(t -> t > 0 && t <= 30)
                .distinct()
                .toList();
        return said.size() == 1 ? OptionalDouble.of(said.get(0)) : OptionalDouble.empty();
    }

    /** The quantity, when all notes that name one agree. */
    public static OptionalInt quantity(List<String> notes) {
        List<Integer> said = figures(QUANTITY, notes, Integer::valueOf).filter(n -> n > 0).distinct().toList();
        return said.size() == 1 ? OptionalInt.of(said.get(0)) : OptionalInt.empty();
    }

    private static <T> Stream<T> figures(Pattern pattern, List<String> notes, Function<String, T> read) {
        List<T> found = new ArrayList<>();
        for (String note : notes) {
            Matcher matcher = pattern.matcher(note);
            while (matcher.find()) {
                found.add(read.apply(matcher.group(1) != null ? matcher.group(1) : matcher.group(2)));
            }
        }
        return found.stream();
    }

    /** The material whose grade or name stands in the notes; empty when none or several do. */
    public static Optional<Material> material(List<String> notes, List<Material> materials) {
        List<Material> said = materials.stream().filter(m -> names(m).anyMatch(n -> stands(n, notes))).toList();
        return said.size() == 1 ? Optional.of(said.get(0)) : Optional.empty();
    }

    private static Stream<String> names(Material material) {
        return Stream.of(material.getGrade(), material.getName()).filter(n -> n != null && n.strip().length() > 2);
    }

    /** As a word of its own, whatever the case and the spaces. */
    private static boolean stands(String name, List<String> notes) {
        Pattern word = Pattern.compile("(?<![\\p{L}\\d])" + Stream.of(name.strip().split("[\\s_-]+|(?<=\\p{L})(?=\\d)"))
                .map(Pattern::quote)
                .reduce((a, b) -> a + "[\\s_-]*" + b).orElse("") + "(?![\\p{L}\\d])",
                        Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        return notes.stream().anyMatch(n -> word.matcher(n.toLowerCase(Locale.ROOT)).find());
    }
}
