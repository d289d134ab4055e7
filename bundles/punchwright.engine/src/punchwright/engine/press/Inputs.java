// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.ANGLE;
import static punchwright.engine.press.Quantity.AREA;
import static punchwright.engine.press.Quantity.COUNT;
import static punchwright.engine.press.Quantity.FORCE;
import static punchwright.engine.press.Quantity.LENGTH;
import static punchwright.engine.press.Quantity.MONEY;
import static punchwright.engine.press.Quantity.PERCENT;
import static punchwright.engine.press.Quantity.RATE;
import static punchwright.engine.press.Quantity.SHARE;
import static punchwright.engine.press.Quantity.STRESS;

/** The inputs of all questions with the ranges in which the formulas hold; each stands once. */
final class Inputs {

    static final Input CUT = Input.needed("length", "L", LENGTH, 1, 10_000);
    static final Input THICKNESS = Input.needed("thickness", "t", LENGTH, PunchingForce.LEAST_THICKNESS_MM,
            PunchingForce.LARGEST_THICKNESS_MM);
    static final Input BAR = Input.needed("thickness", "t", LENGTH, CopperBar.LEAST_MM, CopperBar.LARGEST_MM);
    static final Input STRENGTH = Input.needed("strength", "tau", STRESS, 40, 1000).from(Input.From.SHEAR);
    static final Input TENSILE = Input.needed("tensile", "Rm", STRESS, 60, 1500).from(Input.From.TENSILE);
    static final Input PERCENT_OF_T = Input.needed("percent", "q", PERCENT, 2, 40).usually(0).from(Input.From.CLEARANCE_PERCENT);
    static final Input HOLE_FACTOR = Input.needed("hole-factor", "f", SHARE, 0.5, 3).usually(0).from(Input.From.HOLE_FACTOR);
    static final Input LIFE_FACTOR = Input.needed("life-factor", "m", SHARE, 0.1, 3).usually(1).from(Input.From.LIFE_FACTOR);
    static final Input SHEAR_HEIGHT = Input.needed("shear-height", "h", LENGTH, 0, 20).usually(0);
    static final Input WORN = Input.needed("worn", "w", SHARE, 1, 1.3).usually(1.2);
    static final Input PUNCHES = Input.needed("punches", "n", COUNT, 1, 200).usually(1);
    static final Input LIMIT = Input.needed("limit", "Fl", FORCE, 0, 2e6).usually(0);
    static final Input STRIP_SHARE = Input.needed("share", "s", SHARE, 0.03, 0.40).usually(StrippingForce.USUAL_SHARE);
    static final Input WORK_SHARE = Input.needed("work-share", "x", SHARE, 0.4, 0.7).usually(PunchWork.USUAL_SHARE);
    static final Input RATE_PER_MIN = Input.needed("rate", "z", RATE, 1, 2000).usually(300);
    static final Input EFFICIENCY = Input.needed("efficiency", "eta", SHARE, 0.2, 1).usually(1);
    static final Input C = Input.needed("c", "c", SHARE, 0.005, 0.035).usually(DieClearance.USUAL_C);
    static final Input ON_HAND = Input.needed("on-hand", "ch", LENGTH, 0, 3).usually(0);
    static final Input SIZE = Input.needed("size", "d", LENGTH, 0, 500).usually(0);
    static final Input TOOL = Input.needed("tool", "D", LENGTH, 2, 110);
    static final Input TOOL_LENGTH = Input.needed("tool", "a", LENGTH, 2, 110);
    static final Input TOOL_WIDTH = Input.needed("tool-width", "b", LENGTH, 0, 110).usually(0);
    static final Input SCALLOP = Input.needed("scallop", "h", LENGTH, 0.01, 1);
    static final Input ARC = Input.needed("radius", "R", LENGTH, 0, 2000).usually(0);
    static final Input ARC_ANGLE = Input.needed("angle", "beta", ANGLE, 1, 360).usually(360);
    static final Input EDGE = Input.needed("length", "L", LENGTH, 1, 10_000).usually(100);
    static final Input SHEET = Input.needed("thickness", "t", LENGTH, 0, PunchingForce.LARGEST_THICKNESS_MM).usually(0);
    static final Input SLIT_WIDTH = Input.needed("width", "B", LENGTH, 0, 3000).usually(0);
    static final Input OVERLAP = Input.needed("overlap", "o", LENGTH, 0, 10).usually(1.5);
    static final Input PERMITTED = Input.needed("permitted", "sigma", STRESS, 800,
            2500).usually(SmallestFeature.PERMITTED_STRESS_MPA);
    static final Input SLOT = Input.needed("length", "L", LENGTH, 1, 500);
    static final Input BEND = Input.needed("bend-radius", "r", LENGTH, 0, 50).usually(0);
    static final Input FORCE_ON_HAND = Input.needed("force", "F", FORCE, 1000, 2e6);
    static final Input NOMINAL = Input.needed("nominal", "N", LENGTH, 0.5, 4000);
    static final Input ACCURACY = Input.needed("accuracy", "a", LENGTH, 0, 1).usually(0.1);
    static final Input TURNING = Input.needed("turning", "b", LENGTH, 0, 1).usually(0);
    static final Input WEAR = Input.needed("wear", "v", LENGTH, 0, 1).usually(0.02);
    static final Input EDGE_SCALLOP = Input.needed("scallop", "s", LENGTH, 0, 1).usually(0);
    static final Input PUNCH = Input.needed("size", "d", LENGTH, 0.5, 110);
    static final Input CLEARANCE = Input.needed("clearance", "ct", LENGTH, 0.01, 3);
    static final Input DRY = Input.needed("dry", "dry", COUNT, 0, 1).usually(0);
    static final Input OILED = Input.needed("oiled", "oil", COUNT, 0, 1).usually(0);
    static final Input NIBBLED = Input.needed("nibbled", "nib", COUNT, 0, 1).usually(0);
    static final Input HITS = Input.needed("hits", "Ng", COUNT, 0, 2_000_000).usually(0);
    static final Input SINCE = Input.needed("since", "sg", COUNT, 0, 2_000_000).usually(0);
    static final Input PRICE = Input.needed("price", "P", MONEY, 1, 20_000);
    static final Input RESIDUAL = Input.needed("residual", "S", MONEY, 0, 20_000).usually(0);
    static final Input GRIND_COST = Input.needed("grind-cost", "Cg", MONEY, 0, 500);
    static final Input RESERVE = Input.needed("reserve", "G", LENGTH, 0, 10);
    static final Input PER_GRIND = Input.needed("per-grind", "g", LENGTH, 0.1, 0.3).usually(0.2);
    static final Input FORMED = Input.needed("length", "L", LENGTH, 1, 1000);
    static final Input COINED = Input.needed("area", "A", AREA, 0, 5000).usually(0);
    static final Input FORM_SHEET = Input.needed("thickness", "t", LENGTH, 0.4, 4);
    static final Input HEIGHT = Input.needed("height", "H", LENGTH, 0, 30).usually(0);
    static final Input FORM_WIDTH = Input.needed("width", "w", LENGTH, 0, 110).usually(0);
    static final Input DIE = Input.needed("die", "Dd", LENGTH, 0, 160).usually(0);
    static final Input DEAD_ZONE = Input.needed("dead-zone", "z", LENGTH, 0, 100).usually(0);
    static final Input THREAD = Input.needed("thread", "d", LENGTH, 2.5, 8);
    static final Input COLLAR_HEIGHT = Input.needed("height", "H", LENGTH, 0, 20).usually(0);
    static final Input DIE_RADIUS = Input.needed("die-radius", "r", LENGTH, 0, 5).usually(ThreadCollar.USUAL_DIE_RADIUS_MM);
    static final Input COLLAR_SHEET = Input.needed("thickness", "t", LENGTH, 0.5, 4);
    static final Input HEAD = Input.needed("head", "D", LENGTH, 1, 60);
    static final Input HOLE = Input.needed("hole", "d", LENGTH, 0.5, 50);
    static final Input CONE = Input.needed("cone", "alpha", ANGLE, 60, 120).usually(90);
    static final Input SINK_SHEET = Input.needed("thickness", "t", LENGTH, 0.8, 6);
    static final Input OUTER = Input.needed("outer", "D", LENGTH, 40, 200);
    static final Input INSERTS = Input.needed("inserts", "n", COUNT, 2, 12);
    static final Input WALL = Input.needed("wall", "w", LENGTH, 0, 20).usually(3);
    static final Input INSERT_FORCE = Input.needed("force", "F", FORCE, 0, 500_000).usually(0);
    static final Input EDGE_DISTANCE = Input.needed("edge", "e", LENGTH, 0, 1000).usually(0);
    static final Input WEB = Input.needed("web", "b", LENGTH, 0, 1000).usually(0);
    static final Input BAR_HOLE = Input.needed("hole", "d", LENGTH, 1, 100);

    private Inputs() {
    }
}
