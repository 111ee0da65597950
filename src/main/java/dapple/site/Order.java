package dapple.site;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.ReportAsSingleViolation;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A place in a walk or a visit, 0 to 9999; smaller numbers come first. */
@NotNull
@Min(0)
@Max(9999)
@ReportAsSingleViolation
@Constraint(validatedBy = {})
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.PARAMETER})
public @interface Order {
    String message() default "{arrange.order.wrong}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
