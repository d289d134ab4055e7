// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import java.util.List;

import org.w3c.dom.Document;

/** One step from one format to the next, made on the XML tree before any object is made. */
interface Migration {

    /** The format it starts from; it leads to the next one. */
    int from();

    /**
     * Changes the tree.
     *
     * @return what was done, for people, one entry a kind of change; empty when nothing had to be done
     */
    List<String> apply(Document document);
}
