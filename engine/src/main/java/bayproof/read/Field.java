package bayproof.read;

import bayproof.units.Dimension;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How one component of a record is written in a file. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Field {
    /** Key in the file. */
    String key();

    /** What the value is, as a short noun phrase; asked for by these words when it is missing. */
    String says();

    /** Dimension of a quantity; the value is kept in SI. */
    Dimension in() default Dimension.RATIO;

    /** Words the value must be one of; empty for any word. */
    String[] words() default {};

    /** Whether the value is a cable size. */
    boolean size() default false;

    /** Whether the quantity may be zero. */
    boolean zero() default false;
}
