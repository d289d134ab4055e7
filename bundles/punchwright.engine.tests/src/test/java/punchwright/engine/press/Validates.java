// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a test that holds formulas against published or independently worked values. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(Validates.All.class)
public @interface Validates {

    Class<?> of();

    /** Names of the methods that the test calls. */
    String[] formulas();

    /** Work, page or standard behind the expected values. */
    String source();

    /** Several in one test. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.METHOD)
    @interface All {
        Validates[] value();
    }
}
