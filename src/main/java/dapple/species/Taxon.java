package dapple.species;

import dapple.site.SourceMark;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A row of the library. It suggests a zone and is no target.
 *
 * @param synonym an older scientific name
 * @param zone 1 to 4
 * @param alternative another zone that is named for it
 * @param methods those that are usual for it
 */
public record Taxon(
        SpeciesName name,
        Optional<String> synonym,
        String group,
        String activity,
        String microhabitat,
        int zone,
        Optional<Integer> alternative,
        List<LightMethod> methods,
        SourceMark mark,
        String note) {

    static Taxon of(NamedCsvRecord row) {
        return new Taxon(
                new SpeciesName(row.getField("scientific_name"), row.getField("common_name")),
                filled(row, "synonym"),
                row.getField("group"),
                row.getField("activity"),
                row.getField("microhabitat"),
                Integer.parseInt(row.getField("zone")),
                filled(row, "zone_alternative").map(Integer::valueOf),
                Arrays.stream(row.getField("light_method").split(" or "))
                        .map(word -> LightMethod.valueOf(word.toUpperCase(Locale.ROOT)))
                        .toList(),
                SourceMark.valueOf(row.getField("mark").toUpperCase(Locale.ROOT)),
                row.getField("note"));
    }

    private static Optional<String> filled(NamedCsvRecord row, String field) {
        return Optional.of(row.getField(field)).filter(text -> !text.isEmpty());
    }

    /** The zone and then the alternative, each by the methods of the row that are usual in it. */
    public List<UvZone> suggestions() {
        return Stream.concat(Stream.of(zone), alternative.stream())
                .flatMap(number -> methods.stream().map(method -> new UvZone(number, method)))
                .filter(UvZone::isUsual)
                .toList();
    }

    /** Whether a name is the scientific name or the synonym, in any case of letters. */
    boolean isCalled(String scientificName) {
        return scientificNames().anyMatch(scientificName::equalsIgnoreCase);
    }

    Stream<String> scientificNames() {
        return Stream.concat(Stream.of(name.scientific()), synonym.stream());
    }

    Stream<String> names() {
        return Stream.concat(scientificNames(), Stream.of(name.common()));
    }
}
