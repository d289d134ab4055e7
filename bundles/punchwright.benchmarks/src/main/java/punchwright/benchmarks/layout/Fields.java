// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.Locale;
import java.util.Map;

/** Members of JSON objects whatever the case and underscores of their names; what is missing is said by name. */
final class Fields {

    private Fields() {
    }

    /** The first member of one of the names, or null. */
    static JsonElement find(JsonObject object, String... names) {
        for (String name : names) {
            for (Map.Entry<String, JsonElement> e : object.entrySet()) {
                if (plain(e.getKey()).equals(plain(name)) && !e.getValue().isJsonNull()) {
                    return e.getValue();
                }
            }
        }
        return null;
    }

    private static String plain(String name) {
        return name.replace("_", "").toLowerCase(Locale.ROOT);
    }

    /** @throws IllegalArgumentException when none is there */
    static JsonElement need(JsonObject object, String... names) {
        JsonElement e = find(object, names);
        if (e == null) {
            throw new IllegalArgumentException("no member " + String.join(" or ", names));
        }
        return e;
    }

    static double number(JsonObject object, String... names) {
        JsonElement e = need(object, names);
        double v = e.isJsonPrimitive() ? e.getAsDouble() : Double.NaN;
        if (Double.isNaN(v) || Double.isInfinite(v)) {
            throw new IllegalArgumentException(names[0] + " is " + e + ", not a number");
        }
        return v;
    }

    /** How many pieces: 1 where nothing is said. */
    static int count(JsonObject object) {
        if (find(object, "demand", "quantity") == null) {
            return 1;
        }
        double n = number(object, "demand", "quantity");
        if (n < 0 || n > 100_000 || n != Math.rint(n)) {
            throw new IllegalArgumentException("demand is " + n + "; a whole number from 0 to 100000 is expected");
        }
        return (int) n;
    }

    static JsonArray array(JsonObject object, String... names) {
        JsonElement e = need(object, names);
        if (!e.isJsonArray()) {
            throw new IllegalArgumentException(names[0] + " is no list");
        }
        return e.getAsJsonArray();
    }

    static String name(JsonObject object, String otherwise) {
        JsonElement e = find(object, "name");
        return e != null && e.isJsonPrimitive() ? e.getAsString() : otherwise;
    }
}
