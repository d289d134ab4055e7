// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.Closeable;
import java.io.IOException;

/** Group codes with their values, one by one. The value of a tag is valid until the next call of {@link #next()}. */
interface TagSource extends Closeable {

    /** Moves to the next tag; false at the end of the data. */
    boolean next() throws IOException;

    int code();

    /** Whether the value is this ASCII word; case does not count, nor does white space around it. */
    boolean is(String word);

    /** The value as text, decoded, without white space around it. */
    String text();

    /** The value as text with its white space, which counts where a long text is cut in pieces. */
    String untrimmedText();

    /** The value as number; NaN when it is none, or not finite, or beyond 1e13. */
    double number();

    /** Line of the value in a text file, byte offset in a binary one. */
    long place();

    /** Whether the data ended inside a tag. */
    boolean endedInsideTag();

    /** Number of group codes that could not be read. */
    int badCodes();

    /** Place of the first bad group code; 0 when there is none. */
    long firstBadCodePlace();

    void decodeWith(TextDecoder decoder);

    /** Largest coordinate taken for a real one: beyond, a double no longer resolves 0.01. */
    double LARGEST = 1e13;
}
