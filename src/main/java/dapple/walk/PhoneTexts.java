package dapple.walk;

import dapple.light.expectation.Plausibility.Direction;
import dapple.light.expectation.Slip;
import dapple.light.quantity.Quantity;
import dapple.reading.CoverSaid;
import dapple.reading.Outcome;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** The texts that the script of the phone shows by itself; {0} and {1} are filled in by it. */
@Component
class PhoneTexts {
    private static final List<String> KEYS = List.of(
            "phone.state.WAITING",
            "phone.state.SENT",
            "phone.state.STORED",
            "phone.state.REFUSED",
            "phone.waiting.one",
            "phone.waiting.many",
            "phone.waiting.old",
            "phone.waiting.minutes",
            "phone.waiting.hours",
            "phone.waiting.days",
            "phone.progress",
            "phone.kept",
            "phone.unlikely.again",
            "phone.both",
            "phone.over",
            "phone.taken",
            "phone.cold",
            "phone.dose",
            "phone.dose.assumed",
            "phone.dose.ACTINIC",
            "phone.dose.UVA_EYE",
            "phone.dose.COVER",
            "phone.dose.STOP",
            "phone.other-person",
            "phone.no-store",
            "phone.door",
            "phone.range",
            "phone.state.OPEN",
            "phone.repeats.kept",
            "phone.visit.of",
            "phone.note",
            "phone.photo.kept",
            "phone.photo.count",
            "phone.photo.many",
            "phone.photo.unread",
            "phone.photo.full",
            "phone.photo.lost",
            "phone.photo.again",
            "phone.photo.forget",
            "phone.waiting.photos",
            "photos.busy",
            "repeats.number",
            "visit.log",
            "visit.no-meter");

    private final MessageSource messages;

    PhoneTexts(MessageSource messages) {
        this.messages = messages;
    }

    /** By key; arguments as they stand in the texts. */
    Map<String, String> all() {
        Map<String, String> texts = new TreeMap<>();
        keys().forEach(key -> texts.put(key, messages.getMessage(key, new Object[] {"{0}", "{1}", "{2}"}, Locale.UK)));
        return texts;
    }

    private static Stream<String> keys() {
        return Stream.of(
                        KEYS.stream(),
                        names("phone.unlikely.", Direction.values()),
                        names("phone.slip.", Slip.values()),
                        names("outcome.", Outcome.values()),
                        names("visit.cover.", CoverSaid.values()),
                        names(
                                "visit.amount.wrong.",
                                Quantity.measuredInTheField().toArray(Quantity[]::new)))
                .flatMap(part -> part);
    }

    private static Stream<String> names(String prefix, Enum<?>[] values) {
        return Arrays.stream(values).map(value -> prefix + value.name());
    }
}
