package dapple.housing;

import dapple.animal.AnimalDetails;
import dapple.animal.AnimalKind;
import dapple.animal.Happening;
import dapple.site.Given;
import dapple.site.Line;
import dapple.site.Occurrence;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

/**
 * What happened to an animal or a group; each kind has its own fields.
 *
 * @param number how many; for one animal it is not asked
 * @param newKind what left a group: one animal or a group of its own
 * @param groupId the group that it joins
 */
record EventForm(
        @NotNull @Nullable UUID key,
        @NotNull @Nullable Happening kind,
        @Nullable LocalDateTime at,
        @Nullable Occurrence atWhich,

        @Min(value = 1, message = "{animal.count.wrong}") @Max(value = 9999, message = "{animal.count.wrong}") @Nullable
        Integer number,

        @Line @Size(max = 300) String reason,
        @Nullable AnimalKind newKind,
        @Size(max = 40) @Nullable String accessionNumber,
        @Size(max = 80) @Nullable String name,
        @Nullable Long groupId) {

    private static final List<Happening> OF_ONE =
            List.of(Happening.DEATH, Happening.TRANSFER, Happening.RELEASE, Happening.JOINED);

    private static final List<Happening> OF_GROUP = List.of(
            Happening.BIRTH,
            Happening.DEATH,
            Happening.RECOUNT,
            Happening.SPLIT_OFF,
            Happening.JOINED,
            Happening.TRANSFER,
            Happening.RELEASE);

    static EventForm empty(Happening kind, LocalDateTime now) {
        return new EventForm(UUID.randomUUID(), kind, now, null, null, "", AnimalKind.INDIVIDUAL, "", "", null);
    }

    /** What can be entered for a record. */
    static List<Happening> kinds(AnimalDetails animal) {
        return animal.isGroup() ? OF_GROUP : OF_ONE;
    }

    /** What the kind asks for. */
    void check(AnimalDetails animal, Errors errors) {
        if (kind == null || !kinds(animal).contains(kind)) {
            errors.rejectValue("kind", "event.kind.wrong");
            return;
        }
        if (asksNumber(animal) && number == null && !errors.hasFieldErrors("number")) {
            errors.rejectValue("number", "animal.count.wrong");
        }
        if (kind == Happening.SPLIT_OFF) {
            checkNew(errors);
        }
        if (kind == Happening.JOINED && groupId == null && !errors.hasFieldErrors("groupId")) {
            errors.rejectValue("groupId", "event.group.needed");
        }
    }

    private void checkNew(Errors errors) {
        if (newKind == null && !errors.hasFieldErrors("newKind")) {
            errors.rejectValue("newKind", "event.new-kind.needed");
        }
        checkIsLine("accessionNumber", accessionNumber, errors);
        checkIsLine("name", name, errors);
    }

    private static void checkIsLine(String field, @Nullable String typed, Errors errors) {
        if (typed == null || typed.isBlank() || typed.chars().anyMatch(Character::isISOControl)) {
            errors.rejectValue(field, "event.line");
        }
    }

    private boolean asksNumber(AnimalDetails animal) {
        return animal.isGroup()
                && kind != Happening.JOINED
                && !(kind == Happening.SPLIT_OFF && newKind == AnimalKind.INDIVIDUAL);
    }

    int count(AnimalDetails animal) {
        return asksNumber(animal) ? Given.of(number) : 1;
    }
}
