package dapple.animal;

import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * What is said of an animal or a group, with the version that the form was made from; count and since of a new group
 * only.
 */
record AnimalForm(
        @NotNull @Nullable Long version,
        @NotNull @Nullable AnimalKind kind,
        @Line @Size(max = 40) String accessionNumber,
        @Line @Size(max = 80) String name,

        @NotNull(message = "{animal.species.needed}") @Nullable
        Long speciesId,

        @NotNull @Nullable Sex sex,
        @Nullable String born,
        @NotNull @Nullable Pigment pigment,
        @NotNull @Nullable ReachKind reach,

        @DecimalMin("0.01") @DecimalMax("20") @Digits(integer = 12, fraction = 2) @Nullable
        BigDecimal reachMetres,

        @DecimalMin("0.001")
        @DecimalMax("15")
        @Digits(integer = 12, fraction = 3, message = "{animal.length.digits}")
        @Nullable
        BigDecimal lengthMetres,

        @Nullable LocalDate lengthOn,

        @Size(max = 1000) @Pattern(regexp = "(?U)[\\P{Cntrl}\\r\\n\\t]*", message = "{animal.note.wrong}") @Nullable
        String note,

        @Min(value = 1, message = "{animal.count.wrong}") @Max(value = 9999, message = "{animal.count.wrong}") @Nullable
        Integer count,

        @Nullable LocalDateTime since,
        @Nullable Occurrence sinceWhich) {

    private static final int FIRST_YEAR = 1950;

    static AnimalForm empty() {
        return new AnimalForm(
                0L,
                AnimalKind.INDIVIDUAL,
                "",
                "",
                null,
                Sex.UNKNOWN,
                "",
                Pigment.NORMAL,
                ReachKind.CLIMBS,
                null,
                null,
                null,
                "",
                null,
                null,
                null);
    }

    static AnimalForm of(AnimalDetails animal) {
        AnimalState state = animal.state();
        return new AnimalForm(
                animal.version(),
                animal.facts().kind(),
                state.accessionNumber(),
                state.name(),
                state.speciesId(),
                state.sex(),
                state.born().map(BornAbout::text).orElse(""),
                state.pigment(),
                state.reach().isEverywhere() ? ReachKind.CLIMBS : ReachKind.GROUND,
                state.reach().groundMetres().map(BigDecimal::valueOf).orElse(null),
                null,
                null,
                state.note(),
                null,
                null,
                null);
    }

    AnimalForm onVersion(long newVersion) {
        return new AnimalForm(
                newVersion,
                kind,
                accessionNumber,
                name,
                speciesId,
                sex,
                born,
                pigment,
                reach,
                reachMetres,
                lengthMetres,
                lengthOn,
                note,
                count,
                since,
                sinceWhich);
    }

    /** What no field says alone. */
    void check(Errors errors, LocalDate today) {
        if (isGiven(born)
                && !bornAbout().filter(when -> when.isPossibleOn(today)).isPresent()) {
            errors.rejectValue("born", "animal.born.wrong");
        }
        if (reach == ReachKind.GROUND && reachMetres == null && !errors.hasFieldErrors("reachMetres")) {
            errors.rejectValue("reachMetres", "animal.reach.needed");
        }
        if (reach == ReachKind.CLIMBS && reachMetres != null) {
            errors.rejectValue("reachMetres", "animal.reach.not-needed");
        }
        checkLength(errors, today);
    }

    private void checkLength(Errors errors, LocalDate today) {
        if (errors.hasFieldErrors("lengthMetres") || errors.hasFieldErrors("lengthOn")) {
            return;
        }
        if (lengthMetres != null && lengthOn == null) {
            errors.rejectValue("lengthOn", "animal.length.day-needed");
        }
        if (lengthMetres == null && lengthOn != null) {
            errors.rejectValue("lengthMetres", "animal.length.needed");
        }
        if (lengthOn != null && (lengthOn.isAfter(today) || lengthOn.getYear() < FIRST_YEAR)) {
            errors.rejectValue("lengthOn", "animal.length.day-wrong");
        }
    }

    boolean isGroup() {
        return kind == AnimalKind.GROUP;
    }

    long versionSeen() {
        return Given.of(version);
    }

    AnimalState state() {
        return new AnimalState(
                accessionNumber.strip(),
                name.strip(),
                Given.of(speciesId),
                Given.of(sex),
                bornAbout(),
                Given.of(pigment),
                new Reach(Optional.ofNullable(reachMetres).map(BigDecimal::doubleValue)),
                note == null ? "" : note.strip());
    }

    Optional<BodyLengthFacts> length() {
        return Optional.ofNullable(lengthMetres)
                .map(metres -> new BodyLengthFacts(metres.doubleValue(), Given.of(lengthOn)));
    }

    private Optional<BornAbout> bornAbout() {
        return isGiven(born) ? BornAbout.read(Given.of(born).strip()) : Optional.empty();
    }

    private static boolean isGiven(@Nullable String typed) {
        return typed != null && !typed.isBlank();
    }
}
