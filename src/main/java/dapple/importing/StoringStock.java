package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import dapple.lamp.LampClass;
import dapple.lamp.LampModelChange;
import dapple.lamp.Lamps;
import dapple.lamp.NewLamp;
import dapple.light.quantity.Quantity;
import dapple.meter.MeterChange;
import dapple.meter.MeterRegister;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Stores lamp models, lamps and meters of the sheets. */
@Component
class StoringStock {
    private final Lamps lamps;
    private final MeterRegister meters;
    private final MessageSource messages;

    StoringStock(Lamps lamps, MeterRegister meters, MessageSource messages) {
        this.lamps = lamps;
        this.meters = meters;
        this.messages = messages;
    }

    void store(long site, Book book) {
        book.fresh(Subject.LAMP_MODEL).forEach(one -> one.isStoredAs(lamps.addModel(site, model(one))));
        book.fresh(Subject.LAMP).forEach(one -> one.isStoredAs(lamps.add(site, lamp(book, one))));
        book.fresh(Subject.METER).forEach(one -> one.isStoredAs(meter(site, one)));
    }

    private static LampModelChange model(Entry entry) {
        return new LampModelChange(
                entry.name(),
                entry.fact(Field.LAMP_CLASS, LampClass.class).orElseThrow(),
                entry.number(Field.MODEL_WATTS),
                Optional.empty());
    }

    private static NewLamp lamp(Book book, Entry entry) {
        return new NewLamp(
                entry.name(),
                Storing.idOf(book, entry, Field.MODEL_NAME, Subject.LAMP_MODEL),
                entry.number(Field.BURN_HOURS),
                entry.fact(Field.BOUGHT_ON, LocalDate.class),
                entry.text(Field.STORE_PLACE).orElse(""));
    }

    /** One that nobody describes is kept for what was read with it, and offered nowhere. */
    private long meter(long site, Entry entry) {
        Quantity quantity = entry.fact(Field.METER_QUANTITY, Quantity.class).orElseThrow();
        Optional<String> unknownFrom = entry.text(Field.STORE_PLACE);
        String description = unknownFrom
                .map(sheet -> messages.getMessage("import.meter.unknown", new Object[] {sheet}, Locale.UK))
                .or(() -> entry.text(Field.METER_DESCRIPTION))
                .orElse(entry.name());
        MeterChange change = new MeterChange(
                entry.name(),
                description,
                entry.number(Field.METER_RESOLUTION).orElse(quantity == Quantity.ILLUMINANCE ? 1.0 : 0.1),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        long id = meters.add(site, quantity, change);
        if (unknownFrom.isPresent()) {
            meters.retire(site, id);
        }
        return id;
    }
}
