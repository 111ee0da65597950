package dapple.importing;

import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.Subject;
import dapple.lamp.LampFacts;
import dapple.lamp.LampModelFacts;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterFacts;
import dapple.people.Action;
import dapple.people.People;
import dapple.people.PersonFacts;
import java.util.Map;
import java.util.Optional;

/** Holds lamp models, lamps, meters and people of the sheets against the record. */
final class StockChecks {
    /** Codes of meters that nobody knows, one a quantity. */
    private static final Map<Quantity, String> NAMELESS = Map.of(
            Quantity.UV_INDEX, "Unknown (UV index)",
            Quantity.ILLUMINANCE, "Unknown (lx)",
            Quantity.UVA, "Unknown (UVA)",
            Quantity.IR_A, "Unknown (IR-A)",
            Quantity.IR_B, "Unknown (IR-B)",
            Quantity.IRRADIANCE, "Unknown (W/m²)",
            Quantity.UVB_IRRADIANCE, "Unknown (UVB)",
            Quantity.SURFACE_TEMPERATURE, "Unknown (surface °C)",
            Quantity.AIR_TEMPERATURE, "Unknown (air °C)");

    private final Checking on;
    private final People people;

    StockChecks(Checking on, People people) {
        this.on = on;
        this.people = people;
    }

    void check() {
        on.book().all(Subject.LAMP_MODEL).forEach(this::model);
        on.book().all(Subject.LAMP).forEach(this::lamp);
        on.book().all(Subject.METER).forEach(this::meter);
        on.book().all(Subject.PERSON).forEach(this::person);
    }

    private void model(Entry entry) {
        Optional<LampModelFacts> known = Known.in(on.known().models(), entry.key());
        known.ifPresent(facts -> {
            entry.isOnRecordAs(facts.id());
            on.compare(entry, Field.LAMP_CLASS, Optional.of(facts.lampClass()));
            on.compare(entry, Field.MODEL_WATTS, facts.watts());
        });
        if (known.isEmpty() && !entry.facts().containsKey(Field.LAMP_CLASS)) {
            on.missing(entry, Field.LAMP_CLASS);
        }
    }

    private void lamp(Entry entry) {
        Optional<LampFacts> known = Known.in(on.known().lamps(), entry.key());
        known.ifPresent(facts -> {
            entry.isOnRecordAs(facts.id());
            on.compare(
                    entry, Field.MODEL_NAME, Optional.of(Keys.of(facts.model().name())));
            on.compare(entry, Field.BURN_HOURS, facts.burnHoursAtEntry());
        });
        if (known.isPresent()) {
            return;
        }
        Optional<BadCellException> fallen = on.whyLeftOut(entry, Field.MODEL_NAME, Subject.LAMP_MODEL);
        if (fallen.isPresent()) {
            on.bad(entry, fallen.get());
        } else if (on.named(entry, Field.MODEL_NAME, Subject.LAMP_MODEL).isEmpty()) {
            on.bad(entry, Reason.MODEL_UNKNOWN, entry.name());
        }
    }

    /** A meter that sheets name and nobody describes measures what was read with it; it is kept out of use. */
    private void meter(Entry entry) {
        Optional<Quantity> measured = entry.fact(Field.METER_QUANTITY, Quantity.class);
        Optional<Quantity> read = entry.all(Field.READ_QUANTITY).stream()
                .map(Quantity.class::cast)
                .sorted()
                .findFirst();
        Optional<MeterFacts> known = Known.in(on.known().meters(), Keys.of(code(entry, measured)));
        known.ifPresent(facts -> {
            entry.isOnRecordAs(facts.id());
            on.compare(entry, Field.METER_QUANTITY, Optional.of(facts.quantity()));
            entry.put(Field.METER_QUANTITY, facts.quantity());
        });
        if (known.isEmpty() && measured.or(() -> read).isEmpty()) {
            on.bad(entry, Reason.QUANTITY_NEEDED, entry.name());
            return;
        }
        if (known.isEmpty()) {
            enter(entry, measured, read);
        }
        otherQuantities(entry);
    }

    private static String code(Entry entry, Optional<Quantity> measured) {
        return entry.name().isEmpty()
                ? measured.flatMap(quantity -> Optional.ofNullable(NAMELESS.get(quantity)))
                        .orElse("")
                : entry.name();
    }

    private void enter(Entry entry, Optional<Quantity> measured, Optional<Quantity> read) {
        boolean isDescribed = measured.isPresent() && !entry.name().isEmpty();
        entry.rename(code(entry, measured));
        entry.put(Field.METER_QUANTITY, measured.or(() -> read).orElseThrow());
        if (!isDescribed) {
            entry.put(Field.STORE_PLACE, entry.origin().sheet());
            on.notice(entry, Notice.Kind.METER_UNKNOWN);
        }
    }

    /** What a meter cannot have measured was read with one that nobody knows. */
    private void otherQuantities(Entry entry) {
        Quantity own = entry.fact(Field.METER_QUANTITY, Quantity.class).orElseThrow();
        entry.all(Field.READ_QUANTITY).stream()
                .map(Quantity.class::cast)
                .filter(quantity -> quantity != own)
                .forEach(quantity -> {
                    on.outcome()
                            .notice(Notice.Kind.METER_OTHER_QUANTITY, entry.name() + "|" + quantity, entry.origin());
                    nameless(quantity, entry);
                });
    }

    private void nameless(Quantity quantity, Entry because) {
        String key = Keys.noMeter(quantity);
        if (on.book().find(Subject.METER, key).isEmpty()) {
            Entry meter = on.book().entry(Subject.METER, key, "", because.origin());
            meter.put(Field.METER_QUANTITY, quantity);
            meter(meter);
        }
    }

    private void person(Entry entry) {
        Optional<PersonFacts> known = Known.in(on.known().people(), entry.key());
        if (known.isPresent()) {
            entry.isOnRecordAs(known.get().id());
            on.compare(entry, Field.PERSON_NAME, known.map(PersonFacts::name));
        } else if (!on.me().may(Action.MANAGE_PEOPLE)) {
            on.bad(entry, Reason.PEOPLE_NOT_ALLOWED, entry.name());
        } else if (entry.text(Field.PERSON_NAME).isEmpty()) {
            on.missing(entry, Field.PERSON_NAME);
        } else if (entry.all(Field.PERSON_ROLE).isEmpty()) {
            on.missing(entry, Field.PERSON_ROLE);
        } else if (people.isTaken(entry.name())) {
            on.bad(entry, Reason.TAKEN, entry.name());
        } else {
            on.notice(entry, Notice.Kind.PERSON_WITHOUT_PASSWORD);
        }
    }
}
