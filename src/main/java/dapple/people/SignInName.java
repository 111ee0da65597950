package dapple.people;

import jakarta.validation.Constraint;
import jakarta.validation.Payload;
import jakarta.validation.ReportAsSingleViolation;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A name to sign in with: 2 to 60 letters, digits, dots, hyphens. */
@NotNull
@Pattern(regexp = "\\s*[A-Za-z0-9._-]{2,60}\\s*")
@ReportAsSingleViolation
@Constraint(validatedBy = {})
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.PARAMETER})
public @interface SignInName {
    String message() default "{people.sign-in-name.invalid}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};
}
