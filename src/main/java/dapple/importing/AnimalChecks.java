package dapple.importing;

import dapple.animal.AnimalFacts;
import dapple.importing.sheet.BadCellException;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Reason;
import dapple.importing.sheet.Subject;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Holds animals of the sheets against the record. */
final class AnimalChecks {
    private static final int LONGEST_NUMBER = 40;

    private final Checking on;
    private final Set<String> numbers = new HashSet<>();

    AnimalChecks(Checking on) {
        this.on = on;
    }

    void check() {
        on.book().all(Subject.ANIMAL).forEach(this::animal);
    }

    private void animal(Entry entry) {
        Optional<AnimalFacts> known = Known.in(on.known().animals(), entry.key());
        if (known.isPresent()) {
            entry.isOnRecordAs(known.get().id());
            return;
        }
        Optional<Entry> species = on.named(entry, Field.SPECIES_NAME, Subject.SPECIES);
        Optional<Entry> enclosure = on.named(entry, Field.ENCLOSURE_CODE, Subject.ENCLOSURE);
        Optional<BadCellException> fallen = on.whyLeftOut(entry, Field.SPECIES_NAME, Subject.SPECIES)
                .or(() -> on.whyLeftOut(entry, Field.ENCLOSURE_CODE, Subject.ENCLOSURE));
        if (fallen.isPresent()) {
            on.bad(entry, fallen.get());
        } else if (species.isEmpty()) {
            on.missing(entry, Field.SPECIES_NAME);
        } else if (enclosure.filter(this::isOutOfUse).isPresent()) {
            on.bad(entry, Reason.ENCLOSURE_OUT_OF_USE, enclosure.get().name());
        } else {
            number(entry, enclosure);
        }
    }

    private boolean isOutOfUse(Entry enclosure) {
        return Known.in(on.known().enclosures(), enclosure.key())
                .filter(facts -> !facts.isInUse())
                .isPresent();
    }

    /** Who has no accession number goes by the name, with the enclosure behind it where that is not enough. */
    private void number(Entry entry, Optional<Entry> enclosure) {
        if (entry.text(Field.ACCESSION_NUMBER).isEmpty()) {
            String behind = enclosure.map(one -> " " + one.name()).orElse("");
            String name = cut(entry.name());
            entry.put(Field.ACCESSION_NUMBER, isFree(name) ? name : cut(entry.name() + behind));
            on.notice(entry, Notice.Kind.NO_ACCESSION);
        }
        String number = entry.text(Field.ACCESSION_NUMBER).orElseThrow();
        if (!isFree(number)) {
            on.bad(entry, Reason.TAKEN, number);
            return;
        }
        numbers.add(Keys.of(number));
        if (enclosure.isPresent() && !entry.facts().containsKey(Field.ANIMAL_SINCE)) {
            on.notice(entry, Notice.Kind.ANIMAL_WITHOUT_STAY);
        }
    }

    private boolean isFree(String number) {
        return !numbers.contains(Keys.of(number)) && !on.known().animals().containsKey(Keys.of(number));
    }

    private static String cut(String text) {
        return text.length() > LONGEST_NUMBER ? text.substring(0, LONGEST_NUMBER) : text;
    }
}
