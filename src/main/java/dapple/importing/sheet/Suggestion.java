package dapple.importing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** What the columns of a sheet are taken to mean until somebody says so: by their names, then by what else the sheet has. */
final class Suggestion {
    private final List<ColumnFound> columns;
    private final List<Optional<Meaning>> meanings;

    private Suggestion(Survey survey, Columns known) {
        this.columns = survey.columns();
        this.meanings = new ArrayList<>(
                columns.stream().map(column -> byName(column, known)).toList());
    }

    /** What is a day in one language and something else in another is the day of the readings where it has days. */
    private static Optional<Meaning> byName(ColumnFound column, Columns known) {
        boolean isDay = !known.isChosen(column.name())
                && Words.all().find("day", column.name()).isPresent()
                && column.samples().stream().anyMatch(DayText::isDay);
        return isDay ? Optional.of(new Meaning.Of(Field.READ_ON)) : known.find(column.name());
    }

    static List<Meaning> of(Survey survey, Columns known) {
        Suggestion suggestion = new Suggestion(survey, known);
        suggestion.enclosuresByName();
        suggestion.dayByCells();
        suggestion.nameByItsSheet();
        return suggestion.meanings.stream()
                .map(meaning -> meaning.orElseGet(Meaning.LeftOut::new))
                .toList();
    }

    /** Where no column has the enclosure of the row, the names of columns of numbers may have one each. */
    private void enclosuresByName() {
        if (has(Field.ENCLOSURE_CODE)) {
            return;
        }
        unknown()
                .filter(column -> mayBeNumbers(columns.get(column)))
                .forEach(column -> meanings.set(
                        column, Heading.of(columns.get(column).name()).unrecorded()));
    }

    private static boolean mayBeNumbers(ColumnFound column) {
        return column.samples().isEmpty()
                || column.samples().stream()
                        .anyMatch(sample -> NumberText.of(sample).isPresent());
    }

    /** The only column of days is that of the readings, whatever it is called. */
    private void dayByCells() {
        List<Integer> days = unknown()
                .filter(column -> columns.get(column).onlyDays())
                .boxed()
                .toList();
        if (days.size() == 1 && hasReadings() && !hasDays()) {
            meanings.set(days.get(0), Optional.of(new Meaning.Of(Field.READ_ON)));
        }
    }

    /** The only column called "Name" is that of the animals beside their species, that of the people beside their roles. */
    private void nameByItsSheet() {
        List<Integer> names = unknown()
                .filter(column ->
                        Words.all().find("bare", columns.get(column).name()).isPresent())
                .boxed()
                .toList();
        if (names.size() == 1) {
            named().filter(field -> !has(field))
                    .ifPresent(field -> meanings.set(names.get(0), Optional.of(new Meaning.Of(field))));
        }
    }

    private Optional<Field> named() {
        if (has(Field.SPECIES_NAME) || has(Field.SPECIES_COMMON)) {
            return Optional.of(Field.ANIMAL_NAME);
        }
        return has(Field.SIGN_IN_NAME) || has(Field.PERSON_ROLE) ? Optional.of(Field.PERSON_NAME) : Optional.empty();
    }

    private IntStream unknown() {
        return IntStream.range(0, meanings.size())
                .filter(column -> meanings.get(column).isEmpty());
    }

    private boolean has(Field field) {
        return meanings.contains(Optional.of(new Meaning.Of(field)));
    }

    private boolean hasReadings() {
        return has(Field.READ_AMOUNT)
                || meanings.stream().flatMap(Optional::stream).anyMatch(Meaning.Amount.class::isInstance);
    }

    private boolean hasDays() {
        return meanings.stream().flatMap(Optional::stream).anyMatch(Meaning::isDay);
    }
}
