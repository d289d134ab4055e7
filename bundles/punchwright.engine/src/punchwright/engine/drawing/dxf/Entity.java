// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The tags of one entity, as far as curves need them. Reused from entity to entity. */
final class Entity {

    /** Pieces of a long text come in a tag each, of 250 characters. */
    private static final int MOST_TEXTS = 4096;

    private String type = "";
    private long place;
    private int size;
    private int[] codes = new int[64];
    private double[] numbers = new double[64];
    private int[] textCodes = new int[16];
    private final List<String> texts = new ArrayList<>();
    private String badNumber;
    private long badNumberPlace;
    private boolean embedded;

    void start(String newType, long newPlace) {
        type = newType;
        place = newPlace;
        size = 0;
        texts.clear();
        badNumber = null;
        embedded = false;
    }

    /** Takes the current tag when it is one that matters. */
    void take(TagSource tags) {
        int code = tags.code();
        embedded |= code == 101;
        if (embedded || code >= 240 || code >= 100 && code < 210) {
            return;
        }
        if (code < 10) {
            takeText(code, tags);
        } else {
            takeNumber(code, tags);
        }
    }

    private void takeText(int code, TagSource tags) {
        if (code == 5 || texts.size() >= MOST_TEXTS) {
            return;
        }
        if (texts.size() == textCodes.length) {
            textCodes = Arrays.copyOf(textCodes, 2 * textCodes.length);
        }
        textCodes[texts.size()] = code;
        texts.add(code == 1 || code == 3 ? tags.untrimmedText() : tags.text());
    }

    private void takeNumber(int code, TagSource tags) {
        double value = tags.number();
        if (Double.isNaN(value) && badNumber == null) {
            String text = tags.text();
            badNumber = text.length() > 40 ? text.substring(0, 40) : text;
            badNumberPlace = tags.place();
        }
        if (size == codes.length) {
            codes = Arrays.copyOf(codes, size * 2);
            numbers = Arrays.copyOf(numbers, size * 2);
        }
        codes[size] = code;
        numbers[size++] = value;
    }

    String type() {
        return type;
    }

    long place() {
        return place;
    }

    int size() {
        return size;
    }

    int code(int i) {
        return codes[i];
    }

    double number(int i) {
        return numbers[i];
    }

    /** The first number with this code, else the default. */
    double number(int code, double otherwise) {
        for (int i = 0; i < size; i++) {
            if (codes[i] == code) {
                return numbers[i];
            }
        }
        return otherwise;
    }

    int integer(int code, int otherwise) {
        return (int) number(code, otherwise);
    }

    boolean has(int code) {
        return !Double.isNaN(number(code, Double.NaN));
    }

    /** The point with the codes {@code x}, {@code x + 10}, {@code x + 20}; 0 where one is missing. */
    Vec3 point(int x) {
        return new Vec3(number(x, 0), number(x + 10, 0), number(x + 20, 0));
    }

    /** The plane of the entity. */
    Frame plane() {
        double z = number(230, 1);
        double x = number(210, 0);
        double y = number(220, 0);
        return x == 0 && y == 0 && z > 0 ? Frame.IDENTITY : Frame.ofExtrusion(new Vec3(x, y, z));
    }

    String text(int code, String otherwise) {
        for (int i = 0; i < texts.size(); i++) {
            if (textCodes[i] == code) {
                return texts.get(i);
            }
        }
        return otherwise;
    }

    /** All texts with this code, joined. */
    String joined(int code) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < texts.size(); i++) {
            all.append(textCodes[i] == code ? texts.get(i) : "");
        }
        return all.toString();
    }

    /** The value that should have been a number; null when all were good. */
    String badNumber() {
        return badNumber;
    }

    long badNumberPlace() {
        return badNumberPlace;
    }
}
