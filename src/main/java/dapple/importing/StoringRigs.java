package dapple.importing;

import dapple.importing.sheet.Field;
import dapple.importing.sheet.Subject;
import dapple.people.SignedIn;
import dapple.rig.Cover;
import dapple.rig.CoverMaterial;
import dapple.rig.CoverStep;
import dapple.rig.DailyTimer;
import dapple.rig.Hanging;
import dapple.rig.LampStep;
import dapple.rig.LampTimer;
import dapple.rig.RigChanging;
import dapple.rig.RigEntry;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Stores what hangs and lies in enclosures, as the sheets say it, oldest first; without coordinates it is measured only. */
@Component
class StoringRigs {
    private final RigChanging rigs;
    private final MessageSource messages;

    StoringRigs(RigChanging rigs, MessageSource messages) {
        this.rigs = rigs;
        this.messages = messages;
    }

    void store(Checking checking) {
        Book book = checking.book();
        byTime(book.fresh(Subject.FITTING), Field.FITTED_ON).forEach(one -> {
            Optional<Entry> lamp = book.find(Subject.LAMP, one.key());
            LampStep.Fit step = new LampStep.Fit(lamp.orElseThrow().id().orElseThrow(), hanging(one));
            one.isStoredAs(rigs.make(entry(checking, one, Field.FITTED_ON), step));
        });
        byTime(book.fresh(Subject.COVER), Field.COVER_FROM)
                .forEach(one -> one.isStoredAs(
                        rigs.make(entry(checking, one, Field.COVER_FROM), new CoverStep.Put(cover(one)))));
    }

    private static List<Entry> byTime(List<Entry> entries, Field field) {
        return entries.stream()
                .sorted(Comparator.comparing(
                        (Entry one) -> one.fact(field, Instant.class).orElseThrow()))
                .toList();
    }

    /** The key is made of what is said, so that the same sheet makes the same change. */
    private RigEntry entry(Checking checking, Entry one, Field from) {
        SignedIn me = checking.me();
        Instant at = one.fact(from, Instant.class).orElseThrow();
        long enclosure = Storing.idOf(checking.book(), one, Field.ENCLOSURE_CODE, Subject.ENCLOSURE);
        String identity = String.join("\n", "import", me.siteId() + "", one.subject() + "", one.key(), at + "");
        String note = messages.getMessage(
                "import.rig.note",
                new Object[] {one.origin().sheet(), one.origin().line()},
                Locale.UK);
        UUID key = UUID.nameUUIDFromBytes(identity.getBytes(StandardCharsets.UTF_8));
        return new RigEntry(me.siteId(), enclosure, at, note, me.personId(), key, Optional.empty());
    }

    private Hanging hanging(Entry one) {
        Optional<LampTimer> timer = one.fact(Field.TIMER_ON, LocalTime.class)
                .flatMap(on -> one.fact(Field.TIMER_OFF, LocalTime.class).map(off -> new DailyTimer(on, off)));
        String place = one.text(Field.FITTING_PLACE)
                .orElseGet(() -> messages.getMessage("import.fitting.place", new Object[] {one.name()}, Locale.UK));
        return new Hanging(place, Optional.empty(), timer, Optional.empty());
    }

    private static Cover cover(Entry one) {
        CoverKind kind = one.fact(Field.COVER_KIND, CoverKind.class).orElseThrow();
        int layers = one.number(Field.COVER_LAYERS).map(Double::intValue).orElse(1);
        CoverMaterial material = new CoverMaterial.Passing(kind == CoverKind.MESH, Map.of());
        return new Cover(one.name(), Optional.empty(), Optional.empty(), material, layers);
    }
}
