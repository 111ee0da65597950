package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.Slips;
import dapple.importing.sheet.Subject;
import dapple.species.Library;
import dapple.species.SpeciesFacts;
import dapple.species.SpeciesName;
import dapple.species.Taxon;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds which species names of sheets mean: the site's, the library's, or new ones; nothing near is taken silently. */
final class SpeciesChecks {
    /** Slips that a name may have to be offered. */
    private static final int MOST_SLIPS = 2;

    private static final Pattern BINOMIAL = Pattern.compile("[A-Z][a-z-]+ [a-z.-]+( .+)?");

    private final Checking on;
    private final Library library;
    private final Map<String, Entry> entered = new HashMap<>();

    SpeciesChecks(Checking on, Library library) {
        this.on = on;
        this.library = library;
    }

    void check() {
        on.book().all(Subject.SPECIES).forEach(this::species);
    }

    private void species(Entry entry) {
        Optional<String> chosen = Known.in(on.choices().names(), entry.key());
        String meant = chosen.orElse(entry.name());
        chosen.ifPresent(
                name -> on.outcome().notice(Notice.Kind.SPECIES_CHOSEN, entry.name() + "|" + name, entry.origin()));
        Optional<SpeciesFacts> known = Known.in(on.known().species(), Keys.of(meant));
        Optional<Taxon> taxon = library.find(meant);
        if (known.isPresent()) {
            entry.isOnRecordAs(known.get().id());
        } else if (taxon.isPresent()) {
            become(entry, meant, taxon.get(), Notice.Kind.SPECIES_SYNONYM);
        } else if (chosen.isPresent()) {
            asWritten(entry, meant);
        } else {
            unknown(entry);
        }
    }

    private void become(Entry entry, String said, Taxon taxon, Notice.Kind otherwise) {
        SpeciesName name = taxon.name();
        if (!name.scientific().equalsIgnoreCase(said)) {
            on.outcome().notice(otherwise, said + "|" + name.scientific(), entry.origin());
        }
        Optional<SpeciesFacts> known = Known.in(on.known().species(), Keys.of(name.scientific()));
        if (known.isPresent()) {
            entry.isOnRecordAs(known.get().id());
        } else {
            enter(entry, name);
        }
    }

    private void enter(Entry entry, SpeciesName name) {
        Entry first = entered.computeIfAbsent(Keys.of(name.scientific()), key -> entry);
        if (first != entry) {
            entry.isSameAs(first);
            return;
        }
        entry.rename(name.scientific());
        entry.put(Field.SPECIES_COMMON, name.common());
    }

    private void asWritten(Entry entry, String name) {
        enter(entry, new SpeciesName(name, entry.text(Field.SPECIES_COMMON).orElse(name)));
    }

    private void unknown(Entry entry) {
        List<Taxon> byCommonName = library.search(entry.name()).stream()
                .filter(taxon -> taxon.name().common().equalsIgnoreCase(entry.name()))
                .toList();
        List<String> near = near(entry.name());
        if (byCommonName.size() == 1) {
            become(entry, entry.name(), byCommonName.get(0), Notice.Kind.SPECIES_COMMON);
        } else if (!near.isEmpty()) {
            on.bad(entry, Reason.SPECIES_NEAR, entry.name() + "|" + String.join("|", near));
        } else if (BINOMIAL.matcher(entry.name()).matches()) {
            on.notice(entry, Notice.Kind.SPECIES_NEW);
            asWritten(entry, entry.name());
        } else {
            on.bad(entry, Reason.SPECIES_NO_NAME, entry.name());
        }
    }

    /** Names of the library and of the site that differ from a name by a slip or two, genus and epithet alone. */
    private List<String> near(String typed) {
        String name = twoWords(typed);
        Stream<String> ofSite = on.known().species().values().stream().map(SpeciesFacts::scientificName);
        Stream<String> ofLibrary = library.search("").stream()
                .filter(taxon -> Stream.concat(Stream.of(taxon.name().scientific()), taxon.synonym().stream())
                        .anyMatch(other -> isNear(name, other)))
                .map(taxon -> taxon.name().scientific());
        return Stream.concat(ofSite.filter(other -> isNear(name, other)), ofLibrary)
                .distinct()
                .limit(3)
                .toList();
    }

    private static boolean isNear(String name, String other) {
        String plain = twoWords(other);
        return Math.abs(plain.length() - name.length()) <= MOST_SLIPS && Slips.between(name, plain) <= MOST_SLIPS;
    }

    private static String twoWords(String name) {
        String[] words = name.strip().toLowerCase(Locale.ROOT).split("\\s+", -1);
        return words.length > 1 ? words[0] + " " + words[1] : words[0];
    }
}
