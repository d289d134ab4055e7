// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a test that holds formulas against monotony, signs, limits or another way to the same number, over many inputs. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Sweeps.All.class)
public @interface Sweeps {

    Class<?> of();

    /** Names of the methods that the test calls. */
    String[] formulas();

    /** Several in one test. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.METHOD)
    @interface All {
        Sweeps[] value();
    }
}
