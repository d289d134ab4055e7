// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import punchwright.model.work.Part;

/** What people call parts on a sheet: the number, else the name. */
final class KeptNames {

    private KeptNames() {
    }

    static String label(Part part) {
        return part.getNumber() == null || part.getNumber().isBlank() ? String.valueOf(part.getName()) : part.getNumber();
    }

    /** The label of the part with an id; the id itself for one that is gone. */
    static String label(String partId) {
        Part part = KeptEdits.part(partId);
        return part == null ? partId : label(part);
    }
}
