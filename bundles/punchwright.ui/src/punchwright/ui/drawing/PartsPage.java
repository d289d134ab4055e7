// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import punchwright.model.work.DrawnShape;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.PickPoint;
import punchwright.model.work.WorkFactory;
import punchwright.planner.intake.NewPart;
import punchwright.ui.job.FreeIds;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Third page: what each part is called, of what it is made, and how many are ordered. */
public final class PartsPage extends WizardPage {

    private final Intake intake;
    private final Session session;
    private DataTable<IntakePart> table;
    private PartFields fields;
    private Button withOrder;
    private Text orderNumber;

    PartsPage(Intake intake, Session session) {
        super("parts", Texts.of("intake.parts.title"), null);
        this.intake = intake;
        this.session = session;
        setDescription(Texts.of("intake.parts.message"));
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(10, 8).applyTo(body);
        table = new DataTable<>(body, Texts.of("intake.parts.table"), columns());
        GridDataFactory.fillDefaults().grab(true, true).hint(900, 320).applyTo(table.control());
        fields = new PartFields(body, intake.materials());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(fields);
        Composite order = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(order);
        withOrder = new Button(order, SWT.CHECK);
        withOrder.setText(Texts.of("intake.withOrder"));
        orderNumber = new Text(order, SWT.BORDER);
        orderNumber.setData("field", "orderNumber");
        Accessibles.name(orderNumber, Texts.of("newOrder.message"));
        GridDataFactory.fillDefaults().hint(180, SWT.DEFAULT).applyTo(orderNumber);
        orderNumber.setEnabled(false);
        withOrder.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            orderNumber.setEnabled(withOrder.getSelection());
            complete();
        }));
        orderNumber.addModifyListener(e -> complete());
        table.onSelect(p -> fields.show(table.selection()));
        fields.onChange(() -> {
            table.refresh();
            complete();
        });
        intake.addListener(this::refresh);
        setControl(body);
        refresh();
    }

    private List<Column<IntakePart>> columns() {
        return List.of(Column.text("intake.col.partNumber", 160, IntakePart::number), Column.text("intake.col.name", 160,
                IntakePart::name),
                Column.text("intake.col.material", 150, p -> p.material() == null ? "" : p.material().getName()),
                Column.number("intake.col.thickness", 90, 2, p -> p.thicknessMm() > 0 ? p.thicknessMm() : null),
                Column.count("intake.col.quantity", 70, IntakePart::quantity),
                Column.text("intake.col.says", 190, p -> p.drawing().notesSaid().text()),
                Column.text("intake.col.missing", 210, this::missing), Column.text("intake.col.size", 120, FoundParts::size),
                Column.text("intake.col.drawing", 160, p -> p.drawing().name()));
    }

    private void refresh() {
        if (!table.control().isDisposed()) {
            table.setRows(intake.takenParts());
            fields.show(table.selection());
            complete();
        }
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            if (table.first() == null && !intake.takenParts().isEmpty()) {
                table.control().selectAll();
                fields.show(table.selection());
            }
            table.control().setFocus();
        }
    }

    /** What a part lacks to be made; empty when nothing. */
    private String missing(IntakePart part) {
        List<String> missing = new ArrayList<>();
        if (part.number().isBlank()) {
            missing.add(Texts.of("intake.missing.number"));
        }
        if (part.material() == null) {
            missing.add(Texts.of("intake.missing.material"));
        }
        if (part.thicknessMm() <= 0) {
            missing.add(Texts.of("intake.missing.thickness"));
        }
        if (part.quantity() < 1) {
            missing.add(Texts.of("intake.missing.quantity"));
        }
        return String.join(", ", missing);
    }

    private void complete() {
        List<IntakePart> parts = intake.takenParts();
        long lacking = parts.stream().filter(p -> !missing(p).isEmpty()).count();
        boolean order = !withOrder.getSelection() || !orderNumber.getText().isBlank();
        setMessage(lacking > 0 ? Texts.of("intake.lacking", lacking, parts.size()) : !order ? Texts.of("intake.lacking.order")
                : null);
        setPageComplete(!parts.isEmpty() && lacking == 0 && order);
    }

    /** Whether everything is said; the message tells what is not. */
    boolean check() {
        complete();
        return isPageComplete();
    }

    /** The parts to be, with free identifiers. */
    List<NewPart> newParts() {
        Set<String> taken = new HashSet<>();
        List<NewPart> made = new ArrayList<>();
        for (IntakePart wanted : intake.takenParts()) {
            Part part = WorkFactory.eINSTANCE.createPart();
            part.setId(FreeIds.from(wanted.number(), "part", id -> taken.contains(id) || session.workspace().item(id)
                    .isPresent()));
            taken.add(part.getId());
            part.setNumber(wanted.number());
            part.setName(wanted.name().isBlank() ? wanted.number() : wanted.name());
            part.setMaterial(wanted.material());
            part.setThicknessMm(wanted.thicknessMm());
            part.setShape(shape(wanted));
            made.add(new NewPart(part, wanted.drawing().file(), wanted.quantity()));
        }
        return made;
    }

    private static DrawnShape shape(IntakePart wanted) {
        DrawnShape shape = EcoreUtil.copy(wanted.drawing().choice());
        int shapes = wanted.drawing().parts().stream().mapToInt(p -> p.found().count()).sum();
        if (shapes > 1) {
            PickPoint pick = WorkFactory.eINSTANCE.createPickPoint();
            pick.setXMm(wanted.found().place().x());
            pick.setYMm(wanted.found().place().y());
            shape.setPick(pick);
        }
        return shape;
    }

    /** The order to be; null for none. */
    Order order() {
        if (!withOrder.getSelection()) {
            return null;
        }
        String number = orderNumber.getText().strip();
        Order order = WorkFactory.eINSTANCE.createOrder();
        order.setId(FreeIds.from(number, "order", id -> session.workspace().order(id).isPresent()));
        order.setNumber(number);
        order.setName(number);
        order.setReceived(LocalDate.now().toString());
        return order;
    }

    /** Says that an order of this number is wanted, for tests. */
    public void wantOrder(String number) {
        withOrder.setSelection(true);
        orderNumber.setText(number);
    }

    /** The parts, for tests. */
    public DataTable<IntakePart> table() {
        return table;
    }

    /** The fields below the table. */
    public PartFields fields() {
        return fields;
    }

    static String figure(double mm) {
        return mm > 0 ? Numbers.plain(mm) : "";
    }
}
