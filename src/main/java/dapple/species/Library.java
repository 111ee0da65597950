package dapple.species;

import dapple.site.ReferenceTable;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Zones that the program suggests for species, to be confirmed by a person: {@code shared/species-zones.csv}. */
@Component
public class Library {
    /** How many near names are offered. */
    private static final int OFFERED = 5;

    /** Letters that a near name may differ by (a choice made here). */
    private static final int NEAR = 4;

    private final List<Taxon> taxa = ReferenceTable.rows("shared/species-zones.csv", Taxon::of).stream()
            .sorted(Comparator.comparing(taxon -> taxon.name().scientific()))
            .toList();

    /** The rows in whose scientific name, synonym or common name a text stands, by scientific name. */
    public List<Taxon> search(String text) {
        String wanted = text.strip().toLowerCase(Locale.ROOT);
        return taxa.stream()
                .filter(taxon -> taxon.names()
                        .anyMatch(name -> name.toLowerCase(Locale.ROOT).contains(wanted)))
                .toList();
    }

    /** The row for a scientific name or its synonym. */
    public Optional<Taxon> find(String scientificName) {
        return taxa.stream().filter(taxon -> taxon.isCalled(scientificName)).findFirst();
    }

    /** What may have been meant by a name that is not the scientific name of any row, nearest first. */
    public List<Taxon> near(String typed) {
        if (taxa.stream().anyMatch(taxon -> taxon.name().scientific().equalsIgnoreCase(typed))) {
            return List.of();
        }
        return taxa.stream()
                .map(taxon -> Map.entry(distance(taxon, typed), taxon))
                .filter(entry -> entry.getKey() <= NEAR)
                .sorted(Map.Entry.comparingByKey())
                .limit(OFFERED)
                .map(Map.Entry::getValue)
                .toList();
    }

    private static int distance(Taxon taxon, String typed) {
        return taxon.names()
                .mapToInt(name -> Spelling.distance(name.toLowerCase(Locale.ROOT), typed.toLowerCase(Locale.ROOT)))
                .min()
                .orElse(Integer.MAX_VALUE);
    }
}
