// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/** The works behind the formulas, each named once. */
final class Sources {

    static final Source PRACTICE = new Source("", Standing.PRACTICE);
    static final Source RECORD = new Source("", Standing.RECORD);
    static final Source GEOMETRY = Source.derived("plane geometry");
    static final Source ARITHMETIC = Source.derived("arithmetic");
    static final Source MECHANICS = Source.derived("mechanics");
    static final Source FORCE = Source.read("course notes on press-tool calculation; University of Illinois, Mechanics "
            + "Reference, "
            + "sheet metal");
    static final Source SHEAR = Source.memory("P. C. Sharma, Production Engineering, shear on punch and die");
    static final Source LARGE_SHEAR = Source.read("textbook rule for shear on punch or die, as a public calculator states it");
    static final Source WORN = Source.read("course notes on press-tool calculation: blunt edges 15 to 30 % more");
    static final Source STRIP_SHARE = Source.read("course notes on press-tool calculation: 10 or 20 % of the punching force");
    static final Source STRIP_AREA = Source.memory("Machinery's Handbook, 3500 lb/in2 of edge area");
    static final Source WORK = Source.memory("Hellwig, Semlinger, Spanlose Fertigung: Stanzen, work of cutting");
    static final Source CLEARANCE_ROOT = Source.memory("Oehler/Kaiser, Schnitt-, Stanz- und Ziehwerkzeuge, die clearance");
    static final Source CLEARANCE_ALLOWANCE = Source.memory("Groover, Fundamentals of Modern Manufacturing, sheet metalworking, "
            + "after ASM/SME");
    static final Source PUNCH_STRESS = Source.memory("Oehler/Kaiser; Kalpakjian and Schmid, Manufacturing Engineering and "
            + "Technology");
    static final Source EDGE = Source.read("stamping-design article, edge measured on cold-rolled steel, t 0.70, d 4.70");
    static final Source MINIMA = Source.read("stamping-design articles, design minima");
    static final Source ISO_2768 = Source.read("ISO 2768-1, Table 1");
    static final Source FLANGING = Source.memory("Lange, Umformtechnik, flanging of holes; Romanowski");
    static final Source DIN_336 = Source.memory("DIN 336, core hole D - P");
    static final Source DIN_7500 = Source.read("DIN 7500-2, guide values, steel");
    static final Source ISO_273 = Source.read("ISO 273, clearance holes");
    static final Source GRINDING = Source.read("trade-magazine article on tool grinding: die half to a third as often as the "
            + "punch");
    static final Source SLUG = Source.read("stamping-journal article on slug pulling: vacuum, lubricant, wide clearance, "
            + "suction");

    private Sources() {
    }
}
