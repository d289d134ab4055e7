// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/**
 * Bytes of a name or text to characters. From R2007 (AC1021) text is UTF-8, before it is in the code page that
 * $DWGCODEPAGE names; "\\U+XXXX" stands for a character that the code page lacks (DXF Reference, "Group Codes").
 */
final class TextDecoder {

    /** For files that name no code page: UTF-8 where the bytes are valid, else the code page of western Europe. */
    static final TextDecoder GUESS = new TextDecoder(null);
    static final TextDecoder UTF_8 = new TextDecoder(StandardCharsets.UTF_8);

    private static final Map<String, String> NAMES = Map.ofEntries(Map.entry("ansi_932", "windows-31j"),
            Map.entry("ansi_936", "GBK"), Map.entry("ansi_949", "x-windows-949"), Map.entry("ansi_950", "Big5"),
            Map.entry("ansi_874", "x-windows-874"), Map.entry("ansi_1361", "x-Johab"), Map.entry("johab", "x-Johab"),
            Map.entry("ascii", "US-ASCII"), Map.entry("macintosh", "x-MacRoman"), Map.entry("big5", "Big5"),
            Map.entry("gb2312", "GBK"), Map.entry("ksc5601", "x-windows-949"), Map.entry("dos932", "windows-31j"),
            Map.entry("utf8", "UTF-8"), Map.entry("utf-8", "UTF-8"));

    private final Charset charset;

    private TextDecoder(Charset charset) {
        this.charset = charset;
    }

    /** For the value of $DWGCODEPAGE ("ANSI_1251", "dos850", "iso8859-2"); guesses when the name is unknown. */
    static TextDecoder ofCodePage(String name) {
        String key = name.toLowerCase(Locale.ROOT).trim();
        String java = NAMES.get(key);
        if (java == null) {
            java = key.replaceFirst("^ansi_", "windows-").replaceFirst("^(dos|ibm)_?", "IBM")
                    .replaceFirst("^iso_?8859[-_]?", "ISO-8859-");
        }
        try {
            return new TextDecoder(Charset.forName(java));
        } catch (IllegalArgumentException unknown) {
            return GUESS;
        }
    }

    String decode(byte[] bytes, int from, int to) {
        String raw = charset != null ? new String(bytes, from, to - from, charset) : guess(bytes, from, to);
        return raw.indexOf('\\') >= 0 || raw.indexOf('%') >= 0 ? unescape(raw) : raw;
    }

    private static String guess(byte[] bytes, int from, int to) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, from, to - from)).toString();
        } catch (CharacterCodingException notUtf8) {
            return new String(bytes, from, to - from, Charset.forName("windows-1252"));
        }
    }

    private static String unescape(String raw) {
        StringBuilder out = new StringBuilder(raw.length());
        for (int i = 0; i < raw.length(); i++) {
            int code = raw.startsWith("\\U+", i) ? hex(raw, i + 3) : -1;
            if (code >= 0) {
                out.append((char) code);
                i += 6;
            } else {
                out.append(raw.charAt(i));
            }
        }
        return out.toString();
    }

    private static int hex(String raw, int at) {
        if (at + 4 > raw.length()) {
            return -1;
        }
        int code = 0;
        for (int i = at; i < at + 4; i++) {
            int digit = Character.digit(raw.charAt(i), 16);
            if (digit < 0) {
                return -1;
            }
            code = code * 16 + digit;
        }
        return code;
    }
}
