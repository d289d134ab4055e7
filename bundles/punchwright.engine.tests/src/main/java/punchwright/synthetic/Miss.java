// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

/** Something of a part that was not found as it was drawn. */
public record Miss(String kind, String text) {
}
