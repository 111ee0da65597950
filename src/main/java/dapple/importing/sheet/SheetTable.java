package dapple.importing.sheet;

import dapple.light.quantity.Quantity;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** A sheet of which it is known what its columns mean. */
public final class SheetTable {
    private final Survey survey;
    private final NumberStyle numbers;
    private final DayOrder days;
    private final Map<Field, List<Integer>> columns = new EnumMap<>(Field.class);
    private final List<AmountColumn> amounts = new ArrayList<>();

    /** A column of readings. */
    record AmountColumn(int column, Meaning.Amount meaning, Optional<Dimension.Unit> unit) {}

    public SheetTable(Survey survey, Mapping mapping) {
        this.survey = survey;
        this.numbers = mapping.numbers();
        this.days = mapping.days();
        for (int column = 0; column < survey.columns().size(); column++) {
            Meaning meaning = mapping.meaning(column);
            if (meaning instanceof Meaning.Of of) {
                columns.computeIfAbsent(of.field(), field -> new ArrayList<>()).add(column);
            } else if (meaning instanceof Meaning.Amount amount) {
                Dimension dimension = Dimension.of(amount.quantity());
                amounts.add(new AmountColumn(column, amount, Columns.unit(name(column), dimension)));
            }
        }
    }

    public String label() {
        return survey.label();
    }

    /** Whether any of its columns is read. */
    public boolean isRead() {
        return !columns.isEmpty() || !amounts.isEmpty();
    }

    public boolean hasColumn(Field field) {
        return columns.containsKey(field);
    }

    /**
     * Reads the rows below the names, one after the other.
     *
     * @throws UnreadableException if the sheet breaks off
     */
    public void each(Sheet sheet, Consumer<RowText> taker) {
        try (SheetReader reader = SheetReader.of(sheet)) {
            skipHead(reader);
            while (reader.hasNext()) {
                taker.accept(new RowText(this, reader.next()));
            }
        }
    }

    /** The same for who asks for them; the caller closes the reader. */
    public Rows rows(Sheet sheet) {
        SheetReader reader = SheetReader.of(sheet);
        skipHead(reader);
        return new Rows(this, reader);
    }

    private void skipHead(SheetReader reader) {
        for (int skipped = 0; skipped <= survey.headAt() && reader.hasNext(); skipped++) {
            reader.next();
        }
    }

    List<Integer> columns(Field field) {
        return columns.getOrDefault(field, List.of());
    }

    List<AmountColumn> amounts() {
        return amounts;
    }

    int width() {
        return survey.columns().size();
    }

    String name(int column) {
        String name = survey.columns().get(column).name();
        return name.isEmpty() ? String.valueOf(column + 1) : name;
    }

    NumberStyle numbers() {
        return numbers;
    }

    DayOrder days() {
        return days;
    }

    /** What the name of a column of amounts says of their quantity. */
    Optional<Quantity> quantityNamed(int column) {
        return Columns.OF_NOBODY
                .find(name(column))
                .filter(Meaning.Amount.class::isInstance)
                .map(meaning -> ((Meaning.Amount) meaning).quantity());
    }
}
