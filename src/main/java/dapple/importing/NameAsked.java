package dapple.importing;

import dapple.importing.sheet.Reason;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A species name of a sheet that somebody must say the meaning of, or has said it of.
 *
 * @param near what may be meant by it, besides the name as written
 * @param said what was said; empty: nothing yet
 */
record NameAsked(String typed, List<String> near, Optional<String> said) {
    static List<NameAsked> of(Tried tried) {
        Stream<NameAsked> open = tried.badRows().stream()
                .filter(row -> row.reason() == Reason.SPECIES_NEAR || row.reason() == Reason.SPECIES_NO_NAME)
                .map(BadRow::text)
                .distinct()
                .map(text -> new NameAsked(ImportWords.first(text), ImportWords.others(text), Optional.empty()));
        return Stream.concat(open, said(tried)).toList();
    }

    private static Stream<NameAsked> said(Tried tried) {
        return tried.notices().stream()
                .filter(notice -> notice.kind() == Notice.Kind.SPECIES_CHOSEN)
                .map(notice -> {
                    String typed = ImportWords.first(notice.text());
                    List<String> meant = ImportWords.others(notice.text());
                    return new NameAsked(
                            typed,
                            meant.stream().filter(name -> !name.equals(typed)).toList(),
                            meant.stream().findFirst());
                });
    }

    private boolean offers(String name) {
        return name.isEmpty() || name.equals(typed) || near.contains(name);
    }

    /** Of what a form says what was offered there, by key of the name. */
    static Map<String, String> offered(Optional<Tried> tried, List<String> typed, List<String> meant) {
        Map<String, NameAsked> asked = tried.stream()
                .flatMap(one -> of(one).stream())
                .collect(Collectors.toMap(NameAsked::typed, Function.identity(), (one, other) -> one));
        return Stream.iterate(0, at -> at < Math.min(typed.size(), meant.size()), at -> at + 1)
                .filter(at -> Known.in(asked, typed.get(at))
                        .filter(one -> one.offers(meant.get(at)))
                        .isPresent())
                .collect(Collectors.toMap(at -> Keys.of(typed.get(at)), meant::get, (one, other) -> one));
    }
}
