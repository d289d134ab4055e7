// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.Currency;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.shop.Library;
import punchwright.model.shop.Rates;
import punchwright.model.shop.Revision;
import punchwright.model.shop.ShopPackage.Literals;

/** Rules for the library as a whole and its rates. */
final class LibraryRules {

    private LibraryRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.error("PW-M-011", Library.class, LibraryRules::currency);
        rows.warning("PW-M-012", Library.class, (l, r) -> {
            if (l.getRevisions().isEmpty()) {
                r.add(Literals.LIBRARY__REVISIONS);
            }
        });
        rows.error("PW-M-013", Library.class, LibraryRules::revisionsRise);
        rows.warning("PW-M-014", Library.class, (l, r) -> {
            if (l.getRates() == null || l.getRates().getLabourPerHour() == 0) {
                r.add(Literals.LIBRARY__RATES);
            }
        });
        rows.warning("PW-M-015", Rates.class, (rates, r) -> {
            if (rates.getProfitPercent() > 100) {
                r.add(Literals.RATES__PROFIT_PERCENT, rates.getProfitPercent());
            }
        });
    }

    private static void currency(Library library, Report report) {
        try {
            Currency.getInstance(library.getCurrency() == null ? "" : library.getCurrency());
        } catch (IllegalArgumentException e) {
            report.add(Literals.LIBRARY__CURRENCY, library.getCurrency() == null ? "" : library.getCurrency());
        }
    }

    private static void revisionsRise(Library library, Report report) {
        List<Revision> revisions = library.getRevisions();
        for (int i = 0; i < revisions.size(); i++) {
            int number = revisions.get(i).getNumber();
            int before = i == 0 ? 0 : revisions.get(i - 1).getNumber();
            if (number <= before) {
                report.on(revisions.get(i), Literals.REVISION__NUMBER, number, before);
            }
        }
    }

    /** The library in which an object stands, or null. */
    static Library libraryOf(EObject object) {
        return object != null && EcoreUtil.getRootContainer(object) instanceof Library library ? library : null;
    }

    /** The last revision's number, or 0. */
    static int lastRevision(Library library) {
        return library == null || library.getRevisions().isEmpty() ? 0
                : library.getRevisions().get(library.getRevisions().size() - 1).getNumber();
    }
}
