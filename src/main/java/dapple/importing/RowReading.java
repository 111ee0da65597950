package dapple.importing;

import dapple.animal.BornAbout;
import dapple.animal.Sex;
import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.DayTime;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.RowText;
import dapple.importing.sheet.Subject;
import dapple.lamp.LampClass;
import dapple.light.judging.PointRole;
import dapple.light.quantity.Quantity;
import dapple.people.Role;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Year;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads what a row says: of each thing whose key it fills, and of readings. */
final class RowReading {
    private static final double LEAST_METRES = 0.01;
    private static final double MOST_METRES = 99.99;
    private static final double FARTHEST_OUTSIDE = -9.99;
    private static final int OLDEST_YEAR = 1850;

    private final RowText row;
    private final ZoneId zone;
    private final Instant now;
    private final List<Said> things = new ArrayList<>();
    private final Optional<String> enclosure;

    private RowReading(RowText row, ZoneId zone, Instant now) {
        this.row = row;
        this.zone = zone;
        this.now = now;
        this.enclosure = row.text(Field.ENCLOSURE_CODE);
    }

    /**
     * Reads a row.
     *
     * @param meters what meters measure, by key, as far as it is known
     * @throws BadCellException if something in it cannot be taken
     */
    static RowSaid read(RowText row, ZoneId zone, Instant now, Function<String, Optional<Quantity>> meters) {
        row.checkWidth();
        RowReading reading = new RowReading(row, zone, now);
        reading.places();
        reading.stock();
        reading.animal();
        reading.hanging();
        List<SaidReading> readings = new RowAmounts(row, zone, now, reading.things::add, meters).read();
        return new RowSaid(reading.things, readings);
    }

    private void places() {
        Optional<String> room = row.text(Field.ROOM_NAME);
        room.ifPresent(name -> things.add(Said.of(Subject.ROOM, Keys.of(name), name)));
        enclosure.ifPresent(code -> things.add(Said.of(Subject.ENCLOSURE, Keys.of(code), code)
                .with(Field.ROOM_NAME, room)
                .with(Field.ENCLOSURE_WIDTH, row.number(Field.ENCLOSURE_WIDTH, LEAST_METRES, MOST_METRES))
                .with(Field.ENCLOSURE_DEPTH, row.number(Field.ENCLOSURE_DEPTH, LEAST_METRES, MOST_METRES))
                .with(Field.ENCLOSURE_HEIGHT, row.number(Field.ENCLOSURE_HEIGHT, LEAST_METRES, MOST_METRES))
                .with(Field.STANDARD_POINTS, row.word(Field.STANDARD_POINTS, "yes", YesNo.class))));
        enclosure.ifPresent(code -> row.text(Field.POINT_CODE).ifPresent(point -> point(Keys.of(code), point)));
    }

    private void point(String in, String name) {
        things.add(Said.of(Subject.POINT, Keys.within(in, name), name)
                .with(Field.ENCLOSURE_CODE, Optional.of(in))
                .with(Field.POINT_ROLE, row.word(Field.POINT_ROLE, "role", PointRole.class))
                .with(Field.POINT_X, row.number(Field.POINT_X, FARTHEST_OUTSIDE, MOST_METRES))
                .with(Field.POINT_Y, row.number(Field.POINT_Y, FARTHEST_OUTSIDE, MOST_METRES))
                .with(Field.POINT_Z, row.number(Field.POINT_Z, FARTHEST_OUTSIDE, MOST_METRES)));
    }

    private void stock() {
        row.text(Field.MODEL_NAME)
                .ifPresent(name -> things.add(Said.of(Subject.LAMP_MODEL, Keys.of(name), name)
                        .with(Field.LAMP_CLASS, row.word(Field.LAMP_CLASS, "class", LampClass.class))
                        .with(Field.MODEL_WATTS, row.number(Field.MODEL_WATTS, 0.1, 9999))));
        row.text(Field.LAMP_TAG)
                .ifPresent(tag -> things.add(Said.of(Subject.LAMP, Keys.of(tag), tag)
                        .with(Field.MODEL_NAME, row.text(Field.MODEL_NAME).map(Keys::of))
                        .with(Field.BURN_HOURS, row.number(Field.BURN_HOURS, 0, 999_999))
                        .with(Field.BOUGHT_ON, past(Field.BOUGHT_ON))
                        .with(Field.STORE_PLACE, row.text(Field.STORE_PLACE))));
        row.text(Field.METER_CODE)
                .ifPresent(code -> things.add(Said.of(Subject.METER, Keys.of(code), code)
                        .with(Field.METER_DESCRIPTION, row.text(Field.METER_DESCRIPTION))
                        .with(Field.METER_QUANTITY, row.word(Field.METER_QUANTITY, "quantity", Quantity.class))
                        .with(Field.METER_RESOLUTION, row.number(Field.METER_RESOLUTION, 0.000001, 999_999))));
        row.text(Field.SIGN_IN_NAME).ifPresent(this::person);
    }

    private void person(String signInName) {
        if (!signInName.matches("[A-Za-z0-9._-]{2,60}")) {
            throw new BadCellException(Reason.SIGN_IN_NAME_WRONG, signInName, row.column(Field.SIGN_IN_NAME));
        }
        Set<Role> roles = row.words(Field.PERSON_ROLE, "person", Role.class);
        things.add(Said.of(Subject.PERSON, Keys.of(signInName), signInName)
                .with(Field.PERSON_NAME, row.text(Field.PERSON_NAME))
                .with(Field.PERSON_ROLE, Optional.of(roles).filter(held -> !held.isEmpty())));
    }

    private void animal() {
        Optional<String> common = row.text(Field.SPECIES_COMMON);
        Optional<String> species = row.text(Field.SPECIES_NAME).or(() -> common);
        species.ifPresent(
                name -> things.add(Said.of(Subject.SPECIES, Keys.of(name), name).with(Field.SPECIES_COMMON, common)));
        Optional<String> accession = row.text(Field.ACCESSION_NUMBER);
        Optional<String> name = row.text(Field.ANIMAL_NAME).or(() -> accession);
        String where = enclosure.map(Keys::of).orElse("");
        name.ifPresent(called -> things.add(Said.of(
                        Subject.ANIMAL,
                        accession
                                .map(Keys::of)
                                .orElseGet(() -> Keys.animal(
                                        called, species.map(Keys::of).orElse(""), where)),
                        called)
                .with(Field.ACCESSION_NUMBER, accession)
                .with(Field.SPECIES_NAME, species.map(Keys::of))
                .with(Field.ENCLOSURE_CODE, enclosure.map(Keys::of))
                .with(Field.ANIMAL_SEX, row.word(Field.ANIMAL_SEX, "sex", Sex.class))
                .with(Field.ANIMAL_BORN, born())
                .with(Field.ANIMAL_COUNT, whole(Field.ANIMAL_COUNT, 9999))
                .with(Field.ANIMAL_SINCE, instant(Field.ANIMAL_SINCE))));
    }

    private Optional<BornAbout> born() {
        Optional<String> text = row.text(Field.ANIMAL_BORN);
        if (text.filter(year -> year.matches("[0-9]{4}")).isEmpty()) {
            return past(Field.ANIMAL_BORN).map(day -> new BornAbout(Year.from(day), Optional.of(day)));
        }
        Year year = Year.parse(text.get());
        if (year.getValue() < OLDEST_YEAR || year.isAfter(Year.from(now.atZone(zone)))) {
            throw new BadCellException(Reason.YEAR_IMPOSSIBLE, text.get(), row.column(Field.ANIMAL_BORN));
        }
        return Optional.of(new BornAbout(year, Optional.empty()));
    }

    private void hanging() {
        row.text(Field.LAMP_TAG)
                .filter(tag -> enclosure.isPresent())
                .ifPresent(tag -> things.add(Said.of(Subject.FITTING, Keys.of(tag), tag)
                        .with(Field.ENCLOSURE_CODE, enclosure.map(Keys::of))
                        .with(Field.FITTED_ON, instant(Field.FITTED_ON))
                        .with(Field.FITTING_PLACE, row.text(Field.FITTING_PLACE))
                        .with(Field.TIMER_ON, row.time(Field.TIMER_ON))
                        .with(Field.TIMER_OFF, row.time(Field.TIMER_OFF))));
        row.text(Field.COVER_NAME)
                .filter(name -> enclosure.isPresent())
                .ifPresent(name -> things.add(Said.of(
                                Subject.COVER,
                                Keys.within(enclosure.map(Keys::of).orElse(""), name),
                                name)
                        .with(Field.ENCLOSURE_CODE, enclosure.map(Keys::of))
                        .with(Field.COVER_FROM, instant(Field.COVER_FROM))
                        .with(Field.COVER_KIND, row.word(Field.COVER_KIND, "cover", CoverKind.class))
                        .with(Field.COVER_LAYERS, whole(Field.COVER_LAYERS, 100))));
    }

    private Optional<Double> whole(Field field, double most) {
        Optional<Double> number = row.number(field, 1, most);
        if (number.filter(count -> count != Math.rint(count)).isPresent()) {
            throw new BadCellException(Reason.NOT_WHOLE, String.valueOf(number.get()), row.column(field));
        }
        return number;
    }

    private Optional<LocalDate> past(Field field) {
        Optional<DayTime> written = row.day(field);
        return written.map(day -> RowAmounts.named(row.column(field), () -> day.past(zone, now)));
    }

    private Optional<Instant> instant(Field field) {
        Optional<DayTime> written = row.day(field);
        return written.map(day -> RowAmounts.named(row.column(field), () -> day.instant(zone, now)));
    }
}
