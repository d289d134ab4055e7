// SPDX-License-Identifier: EPL-2.0
package punchwright.engine;

/** The version of the program, as every plan and every sheet states it. */
public final class EngineVersion {

    /** Major, minor and micro number, equal to the version of the bundle. */
    public static final String TEXT = "0.1.0";

    private EngineVersion() {
    }
}
