// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** As much of a JSON reader as the test data need: objects to maps, arrays to lists, numbers to doubles. */
final class Json {

    private final String text;
    private int at;

    private Json(String text) {
        this.text = text;
    }

    static Object parse(String text) {
        Json json = new Json(text);
        Object value = json.value();
        json.blanks();
        if (json.at != text.length()) {
            throw new IllegalArgumentException("more text at " + json.at);
        }
        return value;
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private boolean take(String word) {
        blanks();
        boolean there = text.startsWith(word, at);
        at += there ? word.length() : 0;
        return there;
    }

    private Object value() {
        blanks();
        return switch (text.charAt(at)) {
            case '{' -> object();
            case '[' -> array();
            case '"' -> string();
            case 't', 'f', 'n' -> take("true") ? Boolean.TRUE : take("false") ? Boolean.FALSE : take("null") ? null : fail();
            default -> number();
        };
    }

    private Object fail() {
        throw new IllegalArgumentException("not JSON at " + at);
    }

    private Map<String, Object> object() {
        Map<String, Object> map = new LinkedHashMap<>();
        take("{");
        while (!take("}")) {
            blanks();
            String key = string();
            if (!take(":")) {
                fail();
            }
            map.put(key, value());
            take(",");
        }
        return map;
    }

    private List<Object> array() {
        List<Object> list = new ArrayList<>();
        take("[");
        while (!take("]")) {
            list.add(value());
            take(",");
        }
        return list;
    }

    private String string() {
        StringBuilder out = new StringBuilder();
        for (at++; text.charAt(at) != '"'; at++) {
            char c = text.charAt(at);
            if (c != '\\') {
                out.append(c);
            } else if (text.charAt(++at) == 'u') {
                out.append((char) Integer.parseInt(text.substring(at + 1, at + 5), 16));
                at += 4;
            } else {
                int i = "nrtbf".indexOf(text.charAt(at));
                out.append(i < 0 ? text.charAt(at) : "\n\r\t\b\f".charAt(i));
            }
        }
        at++;
        return out.toString();
    }

    private Double number() {
        int start = at;
        while (at < text.length() && "+-.eE0123456789".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
        return Double.valueOf(text.substring(start, at));
    }
}
