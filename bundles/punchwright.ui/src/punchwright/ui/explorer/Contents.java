// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.explorer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Library;
import punchwright.model.work.Item;
import punchwright.model.work.Order;
import punchwright.ui.editor.Signs;
import punchwright.ui.library.ShopKind;
import punchwright.ui.session.Session;
import punchwright.ui.table.Natural;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** What the explorer shows: the folder, by places. Plans are listed by file and read when they are opened. */
final class Contents {

    private final Session session;

    Contents(Session session) {
        this.session = session;
    }

    List<Node> places() {
        return List.of(shop(), parts(), orders(), files("plans", WorkspacePaths.PLANS, ".pwplan", Icons.PLAN),
                files("drawings", WorkspacePaths.DRAWINGS, ".dxf", Icons.DRAWING),
                files("sheets", WorkspacePaths.OUT, ".xlsx", Icons.WORKBOOK));
    }

    private Node shop() {
        Library library = session.workspace().library();
        Node shop = new Node(null, "shop", Texts.of("place.shop"), Icons.SHOP, library).dirty(session.isDirty(library));
        for (ShopKind kind : ShopKind.values()) {
            int count = ((List<?>) library.eGet(kind.list())).size();
            new Node(shop, "shop/" + kind, kind.plural() + "  (" + count + ")", kind.icon(), kind);
        }
        new Node(shop, "shop/rates", Texts.of("kind.rates"), Icons.RATES, "rates");
        return shop;
    }

    private Node parts() {
        Node parts = new Node(null, "parts", Texts.of("place.parts"), Icons.PART, null);
        session.workspace().items().stream().sorted(Comparator.comparing(Contents::label, Natural::compare))
                .forEach(item -> add(parts, item));
        return parts;
    }

    private Node orders() {
        Node orders = new Node(null, "orders", Texts.of("place.orders"), Icons.ORDER, null);
        session.workspace().orders().stream().sorted(Comparator.comparing(Contents::label, Natural::compare))
                .forEach(o -> add(orders, o));
        return orders;
    }

    private void add(Node parent, EObject object) {
        new Node(parent, parent.key() + "/" + object.eResource().getURI().lastSegment(), label(object), Signs.of(object), object)
                .dirty(session.isDirty(object));
    }

    private static String label(EObject object) {
        return switch (object) {
            case Item item -> joined(item.getNumber(), item.getName());
            case Order order -> joined(order.getNumber(), order.getName());
            default -> object.eClass().getName();
        };
    }

    private static String joined(String number, String name) {
        return (number == null || number.isBlank() ? "" : number + "  ") + (name == null ? "" : name);
    }

    private Node files(String key, String folder, String ending, Icons icon) {
        Node place = new Node(null, key, Texts.of("place." + key), icon, null);
        Path there = session.folder().resolve(folder);
        if (Files.isDirectory(there)) {
            try (Stream<Path> files = Files.list(there)) {
                files.filter(f -> f.getFileName().toString().toLowerCase(java.util.Locale.ROOT).endsWith(ending))
                        .filter(f -> !f.getFileName().toString().startsWith("."))
                        .sorted(Comparator.comparing(f -> f.getFileName().toString(), Natural::compare))
                        .forEach(f -> new Node(place, key + "/" + f.getFileName(), fileLabel(f, ending), icon, f));
            } catch (IOException e) {
                new Node(place, key + "/unreadable", Texts.of("explorer.unreadable", there), Icons.ERROR, null);
            }
        }
        return place;
    }

    private String fileLabel(Path file, String ending) {
        String name = file.getFileName().toString();
        return ".pwplan".equals(ending) ? PlanLabels.of(session, name.substring(0, name.length() - ending.length())) : name;
    }
}
