package dapple.people;

import jakarta.validation.Constraint;
import jakarta.validation.ConstraintValidator;
import jakarta.validation.ConstraintValidatorContext;
import jakarta.validation.Payload;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;

/** A time zone by its name in the IANA database. */
@Constraint(validatedBy = KnownTimeZone.Validator.class)
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.FIELD, ElementType.PARAMETER})
@interface KnownTimeZone {
    String message() default "{people.time-zone.invalid}";

    Class<?>[] groups() default {};

    Class<? extends Payload>[] payload() default {};

    /** Looks the name up. */
    class Validator implements ConstraintValidator<KnownTimeZone, String> {
        @Override
        public boolean isValid(@Nullable String name, ConstraintValidatorContext context) {
            return name != null && ZoneId.getAvailableZoneIds().contains(name);
        }
    }
}
