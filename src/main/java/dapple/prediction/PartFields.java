package dapple.prediction;

import dapple.enclosure.InnerSize;
import dapple.rig.Cover;
import dapple.rig.CoverStep;
import dapple.rig.DailyTimer;
import dapple.rig.Furniture;
import dapple.rig.FurnitureStep;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.RigStep;
import dapple.site.FormReading;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.validation.BindingResult;

/**
 * What is between typed fields and the parts of a rig, where several parts are on one form: the fields are named and judged
 * as on the form for a single change. A part whose fields are as they were written stays what it was, whatever its fields
 * have been rounded to.
 */
@Component
public class PartFields {
    private static final LocalDateTime NO_TIME = LocalDateTime.MIN;
    private static final Set<String> NOT_OF_A_PART = Set.of(
            "key",
            "seen",
            "lampId",
            "at",
            "atWhich",
            "note",
            "timerKind",
            "monthOn",
            "monthOff",
            "monthDark",
            "homeLatitude",
            "homeShifted",
            "homeMiddle",
            "homePlus",
            "homeShortest",
            "homeLongest");
    private static final Map<String, String> OF_A_CHANGE = Map.of(
            "key", "00000000-0000-0000-0000-000000000000",
            "seen", "0",
            "lampId", "0",
            "restedOn", "false");

    private final FormReading reading;
    private final MessageSource messages;

    PartFields(FormReading reading, MessageSource messages) {
        this.reading = reading;
        this.messages = messages;
    }

    /** A field that cannot stay so, and what to enter. */
    public record Wrong(String field, String message) {}

    /** A part, or what is wrong with its fields. */
    public record Read<T>(Optional<T> part, List<Wrong> wrong) {
        public Read {
            wrong = List.copyOf(wrong);
        }
    }

    /**
     * How a lamp hangs.
     *
     * @param before how it hung when the fields were written
     */
    public Read<Hanging> hanging(Map<String, String> typed, Optional<Hanging> before, Optional<InnerSize> size) {
        return read(
                FitForm.class,
                typed,
                size,
                step -> ((LampStep.Fit) step).hanging(),
                hanging -> before.map(old -> kept(hanging, old, typed)).orElse(hanging));
    }

    /**
     * The exact position and direction stay, unless one of their fields was changed; and a timer that changes over the year,
     * unless times are entered.
     */
    private static Hanging kept(Hanging hanging, Hanging before, Map<String, String> typed) {
        Map<String, String> written = typed(before);
        boolean isSame = List.of("xMetres", "yMetres", "zMetres", "lean", "leanTo", "lengthTo").stream()
                .allMatch(field -> same(field, typed, written));
        return new Hanging(
                hanging.place(),
                isSame ? before.mount() : hanging.mount(),
                hanging.timer().or(() -> before.timer().filter(timer -> !(timer instanceof DailyTimer))),
                hanging.circuitId(),
                same("voltagePercent", typed, written) && same("control", typed, written)
                        ? before.gear().on(hanging.gear().ballast())
                        : hanging.gear());
    }

    public Read<Cover> cover(Map<String, String> typed, Optional<Cover> before) {
        return read(
                CoverForm.class,
                typed,
                Optional.empty(),
                step -> ((CoverStep.Put) step).cover(),
                cover -> before.filter(old -> isAsWritten(typed, typed(old))).orElse(cover));
    }

    public Read<Furniture> furniture(Map<String, String> typed, Optional<Furniture> before) {
        return read(
                FurnitureForm.class,
                typed,
                Optional.empty(),
                step -> ((FurnitureStep.Put) step).furniture(),
                item -> before.filter(old -> isAsWritten(typed, typed(old))).orElse(item));
    }

    private static boolean isAsWritten(Map<String, String> typed, Map<String, String> written) {
        return written.keySet().stream().allMatch(field -> same(field, typed, written));
    }

    private static boolean same(String field, Map<String, String> typed, Map<String, String> written) {
        return typed.getOrDefault(field, "").strip().equals(written.getOrDefault(field, ""));
    }

    private <T> Read<T> read(
            Class<? extends RigForm> kind,
            Map<String, String> typed,
            Optional<InnerSize> size,
            Function<RigStep, T> part,
            Function<T, T> kept) {
        Map<String, String> fields = new HashMap<>(OF_A_CHANGE);
        fields.putAll(typed);
        BindingResult errors = reading.read(kind, fields);
        if (!(errors.getTarget() instanceof RigForm form)) {
            return new Read<>(Optional.empty(), wrong(errors));
        }
        form.check(errors);
        size.ifPresent(known -> form.checkIn(known, errors));
        return errors.hasErrors()
                ? new Read<>(Optional.empty(), wrong(errors))
                : new Read<>(made(form, part).map(kept), List.of());
    }

    private static <T> Optional<T> made(RigForm form, Function<RigStep, T> part) {
        return Optional.of(part.apply(form.step(0)));
    }

    private List<Wrong> wrong(BindingResult errors) {
        return errors.getFieldErrors().stream()
                .map(error -> new Wrong(error.getField(), messages.getMessage(error, Locale.UK)))
                .toList();
    }

    /** The fields of a lamp's place, direction, circuit and gear, and the times of a timer that has the same every day. */
    public static Map<String, String> typed(Hanging hanging) {
        return FormText.of(FitForm.of(hanging, NO_TIME), NOT_OF_A_PART);
    }

    public static Map<String, String> typed(Cover cover) {
        return FormText.of(CoverFields.of(cover, NO_TIME), NOT_OF_A_PART);
    }

    public static Map<String, String> typed(Furniture item) {
        return FormText.of(FurnitureFields.of(item, NO_TIME), NOT_OF_A_PART);
    }
}
