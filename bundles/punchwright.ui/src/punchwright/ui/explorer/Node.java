// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.explorer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EObject;

import punchwright.ui.theme.Icons;

/**
 * One line of the explorer. Two nodes of the same key are the same line, whatever they show, so that the tree stays open over a
 * refresh.
 */
final class Node {

    private final String key;
    private final String label;
    private final Icons icon;
    private final Object target;
    private final Node parent;
    private final List<Node> children = new ArrayList<>();
    private boolean dirty;

    /** A line below {@code parent}; the target is an object, a file, a kind, or null for a heading. */
    Node(Node parent, String key, String label, Icons icon, Object target) {
        this.parent = parent;
        this.key = key;
        this.label = label;
        this.icon = icon;
        this.target = target;
        if (parent != null) {
            parent.children.add(this);
        }
    }

    Node dirty(boolean isDirty) {
        dirty = isDirty;
        return this;
    }

    String label() {
        return dirty ? "* " + label : label;
    }

    Icons icon() {
        return icon;
    }

    Object target() {
        return target;
    }

    EObject object() {
        return target instanceof EObject object ? object : null;
    }

    Path file() {
        return target instanceof Path file ? file : null;
    }

    Node parent() {
        return parent;
    }

    List<Node> children() {
        return children;
    }

    String key() {
        return key;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Node node && node.key.equals(key);
    }

    @Override
    public int hashCode() {
        return Objects.hashCode(key);
    }
}
