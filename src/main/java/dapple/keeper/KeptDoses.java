package dapple.keeper;

import dapple.light.dose.KeeperDose;
import dapple.people.SignedIn;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what fell on who read meters, for that person alone, where the site has settled so. */
@Service
public class KeptDoses {
    /** Days that are shown. */
    static final int SHOWN_DAYS = 60;

    private final KeptDoseRepository doses;
    private final Clock clock;

    KeptDoses(KeptDoseRepository doses, Clock clock) {
        this.doses = doses;
        this.clock = clock;
    }

    /** Keeps a dose once, however often it is sent. */
    @Transactional
    public void keep(Taken taken, KeeperDose dose) {
        if (!doses.existsByEntryKey(taken.key())) {
            doses.saveAndFlush(new KeptDose(taken, dose));
        }
    }

    /** One's own of the last {@value #SHOWN_DAYS} days, the newest day first. */
    @Transactional(readOnly = true)
    public List<DoseDay> days(SignedIn me) {
        Instant from =
                today(me).minusDays(SHOWN_DAYS - 1L).atStartOfDay(me.zone()).toInstant();
        TreeMap<LocalDate, KeeperDose> byDay = doses.ofPerson(me.personId(), from).stream()
                .collect(Collectors.toMap(
                        kept -> LocalDate.ofInstant(kept.takenAt(), me.zone()),
                        KeptDose::dose,
                        KeeperDose::plus,
                        () -> new TreeMap<>(Comparator.<LocalDate>reverseOrder())));
        return byDay.entrySet().stream()
                .map(day -> new DoseDay(day.getKey(), day.getValue()))
                .toList();
    }

    LocalDate today(SignedIn me) {
        return LocalDate.ofInstant(clock.instant(), me.zone());
    }

    /** Erases all that is kept of oneself. */
    @Transactional
    public void erase(SignedIn me) {
        eraseOf(me.personId());
    }

    /** The same of somebody whose names go. */
    @Transactional
    public void eraseOf(long personId) {
        doses.eraseOf(personId);
    }
}
