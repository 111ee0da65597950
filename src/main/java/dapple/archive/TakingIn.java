package dapple.archive;

import dapple.people.FirstRun;
import dapple.people.NewPerson;
import dapple.people.People;
import dapple.people.Role;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Service;

/** Takes an archive into an empty installation: all of it, or nothing. */
@Service
class TakingIn {
    private final FirstRun firstRun;
    private final Loading loading;
    private final Sites sites;
    private final People people;

    TakingIn(FirstRun firstRun, Loading loading, Sites sites, People people) {
        this.firstRun = firstRun;
        this.loading = loading;
        this.sites = sites;
        this.people = people;
    }

    /**
     * Checks a file and takes nothing in.
     *
     * @throws ArchiveRefusedException if it would not be taken in, whoever is named with it
     */
    void check(Path file) {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            requireWhole(archive);
        } catch (IOException cause) {
            throw new ArchiveRefusedException(ArchiveFault.CUT, cause);
        }
    }

    /**
     * Checks a file, then takes it in.
     *
     * @param administrator who is added to a year's record, in which nobody has a password
     * @throws ArchiveRefusedException if it is not taken in; the installation is as it was then
     */
    TakenIn takeIn(Path file, Optional<NewPerson> administrator) {
        try (ArchiveFile archive = ArchiveFile.open(file)) {
            requireWhole(archive);
            requireAdministrator(archive.manifest(), administrator);
            administrator.ifPresent(person -> requireFree(archive, person));
            return firstRun.whilePending(() -> load(archive, administrator))
                    .orElseThrow(() -> new ArchiveRefusedException(ArchiveFault.NOT_EMPTY, "begun already"));
        } catch (IOException cause) {
            throw new ArchiveRefusedException(ArchiveFault.CUT, cause);
        }
    }

    private void requireWhole(ArchiveFile archive) throws IOException {
        if (!firstRun.isPending()) {
            throw new ArchiveRefusedException(ArchiveFault.NOT_EMPTY, "begun already");
        }
        if (!loading.knows(archive.manifest())) {
            throw new ArchiveRefusedException(
                    ArchiveFault.NEWER, "schema " + archive.manifest().schema());
        }
        archive.check();
    }

    private static void requireAdministrator(Manifest manifest, Optional<NewPerson> administrator) {
        if (manifest.kind() == ArchiveKind.YEAR && administrator.isEmpty()) {
            throw new ArchiveRefusedException(ArchiveFault.NEEDS_ADMINISTRATOR, "a year's record");
        }
    }

    private static void requireFree(ArchiveFile archive, NewPerson person) {
        String wanted = person.signInName().strip().toLowerCase(Locale.ROOT);
        try (TableRows rows = new TableRows(archive.content("tables/person.csv"))) {
            int place = rows.columns().indexOf("sign_in_name");
            while (place >= 0 && rows.hasNext()) {
                if (rows.next()[place].equals(wanted)) {
                    throw new ArchiveRefusedException(ArchiveFault.NAME_TAKEN, wanted);
                }
            }
        } catch (IOException cause) {
            throw new ArchiveRefusedException(ArchiveFault.ALTERED, cause);
        }
    }

    private TakenIn load(ArchiveFile archive, Optional<NewPerson> administrator) {
        boolean isYear = archive.manifest().kind() == ArchiveKind.YEAR;
        long rows = loading.load(
                archive, () -> administrator.filter(person -> isYear).ifPresent(this::add));
        return new TakenIn(archive.manifest(), rows);
    }

    private void add(NewPerson person) {
        SiteFacts site = sites.all().get(0);
        people.add(site.id(), person, Set.of(Role.ADMINISTRATOR), Optional.empty());
    }
}
