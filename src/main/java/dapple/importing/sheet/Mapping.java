package dapple.importing.sheet;

import java.util.List;

/**
 * What a person says of a sheet.
 *
 * @param meanings codes of {@link Meaning}, column by column
 * @param days which order days have that may be read either way
 * @param numbers how numbers are written that may be read either way
 */
public record Mapping(List<String> meanings, DayOrder days, NumberStyle numbers) {
    /** What the sheet and the names of its columns say by themselves. */
    public static Mapping suggested(Survey survey, Columns columns) {
        List<Meaning> meanings = Suggestion.of(survey, columns);
        return new Mapping(meanings.stream().map(Meaning::code).toList(), order(survey, meanings), survey.numbers());
    }

    private static DayOrder order(Survey survey, List<Meaning> meanings) {
        DayOrder order = DayOrder.NOT_ASKED;
        for (int column = 0; column < meanings.size(); column++) {
            order = meanings.get(column).isDay()
                    ? order.and(survey.columns().get(column).days())
                    : order;
        }
        return order;
    }

    Meaning meaning(int column) {
        return column < meanings.size()
                ? Meaning.of(meanings.get(column)).orElseGet(Meaning.LeftOut::new)
                : new Meaning.LeftOut();
    }
}
