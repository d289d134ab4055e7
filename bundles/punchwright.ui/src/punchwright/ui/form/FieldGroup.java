// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.List;

/**
 * Fields under one heading, as data.
 *
 * @param title  heading
 * @param fields   in order
 */
public record FieldGroup(String title, List<Field> fields) {
}
