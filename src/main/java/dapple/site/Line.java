package dapple.site;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.ReportAsSingleViolation;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Something to read, on one line and without control characters. */
@NotNull
@Pattern(regexp = "(?U)(?=.*\\S)\\P{Cntrl}*")
@ReportAsSingleViolation
@Constraint(validatedBy = {})
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.PARAMETER})
public @interface Line {
    String message() default "{arrange.line}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
