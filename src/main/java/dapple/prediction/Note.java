package dapple.prediction;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.ReportAsSingleViolation;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A few words, or none, without control characters. */
@Size(max = 500)
@Pattern(regexp = "(?U)[\\P{Cntrl}\\r\\n\\t]*")
@ReportAsSingleViolation
@Constraint(validatedBy = {})
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.PARAMETER})
public @interface Note {
    String message() default "{rig.note.wrong}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
