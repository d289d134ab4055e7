// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

/** What an answer says: texts in both languages, symbols all explained, and formulas that give the numbers beside them. */
class QuestionTextsTest {

    private static final Set<String> FUNCTIONS = Set.of("sqrt", "min", "max", "ceil", "floor", "sin", "cos", "tan", "asin",
            "acos", "pi");

    private static Properties texts(String name) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = Calculation.class.getResourceAsStream(name)) {
            texts.load(in);
        }
        return texts;
    }

    @Test
    void bothLanguagesHaveTheSameTexts() throws IOException {
        for (String name : List.of("questions", "findings")) {
            Properties english = texts(name + ".properties");
            Properties german = texts(name + "_de.properties");
            assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
            for (String key : english.stringPropertyNames()) {
                assertEquals(placeholders(english.getProperty(key)), placeholders(german.getProperty(key)), key);
            }
        }
        for (PressReason r : PressReason.values()) {
            assertFalse(texts("findings.properties").getProperty(r.code() + ".message", "").isEmpty(), r.code());
        }
    }

    private static Set<String> placeholders(String text) {
        Set<String> found = new TreeSet<>();
        Matcher m = Pattern.compile("\\{(\\d+)").matcher(text);
        while (m.find()) {
            found.add(m.group(1));
        }
        return found;
    }

    /** Draws inputs of a question inside their ranges; optional ones now and then keep what is usual. */
    private static Map<String, Double> draw(Calculation c, Draw d) {
        Map<String, Double> in = new TreeMap<>();
        for (Input i : c.inputs()) {
            if (i.required() || d.between(0, 1) < 0.7) {
                double value = d.between(Math.max(i.least(), 1e-3), i.largest());
                in.put(i.name(), i.quantity() == Quantity.COUNT ? Math.max(Math.ceil(i.least()), Math.rint(value)) : value);
            }
        }
        if (c == Calculation.COLLAR) {
            in.put("thread", d.of(ThreadSize.values()).diameterMm());
        }
        return in;
    }

    private interface Look {
        void at(Answer answer);
    }

    /** Answers of every question to many draws; most draws must have an answer. */
    private static void everyQuestion(long seed, Look look) {
        for (Calculation c : Calculation.values()) {
            int[] answered = { 0 };
            Draw.many(seed, 200, d -> {
                Basis basis = Basis.of(new Material("M", "X", d.of(MaterialGroup.values()), 7.85, 270, 410, 320,
                        d.of(ClearanceRule.values()), d.whole(0, 1) * 20, 1, 1.2));
                try {
                    look.at(c.answer(draw(c, d), basis));
                    answered[0]++;
                } catch (IllegalArgumentException e) {
                    assertTrue(e.getMessage().startsWith(c.word()), e.getMessage());
                }
            });
            assertTrue(answered[0] >= 60, c + " answered " + answered[0] + " of 200");
        }
    }

    @Test
    void everyNameStandsInBothLanguages() {
        everyQuestion(91, a -> {
            for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                assertFalse(a.question().title(locale).isBlank());
                a.values().keySet().forEach(i -> assertFalse(i.label(locale).isBlank()));
                a.figures().forEach(f -> assertFalse(f.name(locale).isBlank() || f.source().standing().in(locale).isBlank()));
                a.findings().forEach(f -> assertFalse(f.message(locale).isBlank() || f.message(locale).contains("{")));
            }
        });
    }

    /** Each figure's formula, worked out by an evaluator of its own from inputs and figures before it, gives its value. */
    @Test
    void theFormulaShownGivesTheNumberShown() {
        everyQuestion(92, a -> {
            Map<String, Double> known = new TreeMap<>();
            a.values().forEach((i, v) -> known.put(i.symbol(), v));
            for (Figure f : a.figures()) {
                if (!f.formula().isEmpty()) {
                    double worked = new Evaluator(f.formula(), known::get).value();
                    assertEquals(f.value(), worked, 1e-6 * Math.max(1, Math.abs(f.value())), a.question() + " " + f + " "
                            + known);
                }
                known.put(f.symbol(), f.value());
            }
        });
    }

    @Test
    void everySymbolInAFormulaIsExplained() {
        everyQuestion(93, a -> {
            Set<String> known = new TreeSet<>(FUNCTIONS);
            a.values().keySet().forEach(i -> known.add(i.symbol()));
            Set<String> own = new TreeSet<>();
            for (Figure f : a.figures()) {
                Matcher m = Pattern.compile("[A-Za-z][A-Za-z0-9]*").matcher(f.formula());
                while (m.find()) {
                    assertTrue(known.contains(m.group()), a.question() + ": " + m.group() + " in " + f.formula());
                }
                assertTrue(own.add(f.symbol()), a.question() + " uses " + f.symbol() + " twice");
                assertTrue(known.add(f.symbol()), a.question() + ": " + f.symbol() + " is an input as well");
            }
        });
    }

    @Test
    void everyFigureSaysWhereItComesFrom() {
        everyQuestion(94, a -> a.figures().forEach(f -> {
            boolean named = !f.source().citation().isBlank();
            boolean needsNone = f.source().standing() == Standing.PRACTICE || f.source().standing() == Standing.RECORD;
            assertTrue(named || needsNone, a.question() + " " + f);
            assertFalse(a.results().isEmpty());
        }));
    }

    /** Works out a formula: sums, products, powers, brackets, functions; angles in degrees; own code, not the engine's. */
    private static final class Evaluator {

        private final String text;
        private final ToDoubleFunction<String> symbols;
        private int at;

        Evaluator(String text, ToDoubleFunction<String> symbols) {
            this.text = text.replace(" ", "");
            this.symbols = symbols;
        }

        double value() {
            double value = sum();
            assertEquals(text.length(), at, "left over in " + text);
            return value;
        }

        private boolean takes(char c) {
            boolean there = at < text.length() && text.charAt(at) == c;
            at += there ? 1 : 0;
            return there;
        }

        private double sum() {
            double value = product();
            while (true) {
                if (takes('+')) {
                    value += product();
                } else if (takes('-')) {
                    value -= product();
                } else {
                    return value;
                }
            }
        }

        private double product() {
            double value = power();
            while (true) {
                if (takes('*')) {
                    value *= power();
                } else if (takes('/')) {
                    value /= power();
                } else {
                    return value;
                }
            }
        }

        private double power() {
            double base = atom();
            return takes('^') ? Math.pow(base, atom()) : base;
        }

        private double atom() {
            if (takes('(')) {
                double value = sum();
                assertTrue(takes(')'), text);
                return value;
            }
            int from = at;
            boolean word = Character.isLetter(text.charAt(at));
            while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || !word && text.charAt(at) == '.')) {
                at++;
            }
            String token = text.substring(from, at);
            if (!word) {
                return Double.parseDouble(token);
            }
            return takes('(') ? function(token) : token.equals("pi") ? Math.PI : symbols.applyAsDouble(token);
        }

        private double function(String name) {
            double x = sum();
            while (takes(',')) {
                double y = sum();
                x = name.equals("min") ? Math.min(x, y) : Math.max(x, y);
            }
            assertTrue(takes(')'), text);
            return switch (name) {
                case "sqrt" -> Math.sqrt(x);
                case "ceil" -> Math.ceil(x - 1e-9);
                case "floor" -> Math.floor(x + 1e-9);
                case "sin" -> Math.sin(Math.toRadians(x));
                case "cos" -> Math.cos(Math.toRadians(x));
                case "tan" -> Math.tan(Math.toRadians(x));
                case "acos" -> Math.toDegrees(Math.acos(x));
                case "asin" -> Math.toDegrees(Math.asin(x));
                default -> x;
            };
        }
    }
}
