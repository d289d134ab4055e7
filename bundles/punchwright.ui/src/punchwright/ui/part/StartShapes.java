// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.model.work.BusbarShape;
import punchwright.model.work.FlangeShape;
import punchwright.model.work.HolePattern;
import punchwright.model.work.HoleShape;
import punchwright.model.work.NotchedBracketShape;
import punchwright.model.work.PartShape;
import punchwright.model.work.PerforatedPanelShape;
import punchwright.model.work.PlateShape;
import punchwright.model.work.WorkFactory;
import punchwright.model.work.WorkPackage;

/**
 * The kinds of parts that are given by dimensions, each with sizes to begin with, so that there is a picture from the first
 * moment.
 */
final class StartShapes {

    /** In the order in which they are offered. */
    static final List<EClass> KINDS = List.of(WorkPackage.Literals.PLATE_SHAPE, WorkPackage.Literals.FLANGE_SHAPE,
            WorkPackage.Literals.PERFORATED_PANEL_SHAPE, WorkPackage.Literals.NOTCHED_BRACKET_SHAPE,
                    WorkPackage.Literals.RACK_PANEL_SHAPE,
            WorkPackage.Literals.BUSBAR_SHAPE);

    private StartShapes() {
    }

    static PartShape of(EClass kind) {
        PartShape shape = (PartShape) EcoreUtil.create(kind);
        switch (shape) {
            case PlateShape p -> {
                p.setLengthMm(200);
                p.setWidthMm(100);
                p.getHoles().add(holes(10, 20, 20, 2, 160, 2, 60));
            }
            case FlangeShape f -> {
                f.setOuterDiameterMm(150);
                f.setBoreDiameterMm(60);
                f.setBoltCircleDiameterMm(110);
                f.setBoltCount(4);
                f.setBoltHoleDiameterMm(11);
                f.setBoltStartAngleDeg(45);
            }
            case PerforatedPanelShape p -> {
                p.setLengthMm(300);
                p.setWidthMm(200);
                p.setMarginXMm(20);
                p.setMarginYMm(20);
                p.setHoleSizeMm(5);
                p.setPitchMm(8);
            }
            case NotchedBracketShape n -> {
                n.setLengthMm(200);
                n.setWidthMm(120);
                n.setNotchXMm(25);
                n.setNotchYMm(25);
            }
            case BusbarShape b -> {
                b.setLengthMm(400);
                b.setWidthMm(40);
                b.getHoles().add(holes(11, 20, 20, 2, 360, 1, 0));
            }
            default -> { }
        }
        return shape;
    }

    private static HolePattern holes(double diameter, double x, double y, int countX, double pitchX, int countY, double pitchY) {
        HolePattern holes = WorkFactory.eINSTANCE.createHolePattern();
        holes.setShape(HoleShape.ROUND);
        holes.setSizeMm(diameter);
        holes.setXMm(x);
        holes.setYMm(y);
        holes.setCountX(countX);
        holes.setPitchXMm(pitchX);
        holes.setCountY(countY);
        holes.setPitchYMm(pitchY);
        return holes;
    }
}
