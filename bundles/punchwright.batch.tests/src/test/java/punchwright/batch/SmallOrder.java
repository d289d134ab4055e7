// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Order T-1 of gussets in a copy of the demo shop: small enough to be planned in every test. */
final class SmallOrder {

    private static final String TEXT = """
            <?xml version="1.0" encoding="UTF-8"?>
            <?punchwright format="1"?>
            <work:Order xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
            xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" \
            xmlns:work="urn:punchwright:work" id="T-1" name="Trial" number="T-1"%s>
              <lines id="T-1-10" quantity="%d">
                <item xsi:type="work:Part" href="../parts/gusset-150.pwpart#gusset-150"/>
              </lines>
            </work:Order>
            """;

    private SmallOrder() {
    }

    /** @param dates attributes of the order, for instance its dates, each with a blank before it; may be empty */
    static void write(Path shop, int quantity, String dates) throws IOException {
        Files.writeString(shop.resolve("orders/T-1.pworder"), TEXT.formatted(dates, quantity));
    }
}
