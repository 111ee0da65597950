package dapple.importing;

import dapple.enclosure.Enclosures;
import dapple.importing.sheet.Columns;
import dapple.importing.sheet.Fault;
import dapple.importing.sheet.Mapping;
import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.Sheet;
import dapple.importing.sheet.SheetFile;
import dapple.importing.sheet.Survey;
import dapple.importing.sheet.UnreadableException;
import dapple.importing.sheet.Words;
import dapple.people.SignedIn;
import dapple.site.ConflictException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Files of sheets from when they are sent until they are taken in, given up or too old. */
@Service
class Imports {
    private static final int MOST_COLUMNS = 900;

    private final Runs runs;
    private final SpeciesMeant species;
    private final Sent sent;
    private final OldImports old;
    private final ImportJobs jobs;
    private final Trying trying;
    private final ImportWork takingIn;
    private final Enclosures enclosures;
    private final Clock clock;

    Imports(
            Runs runs,
            SpeciesMeant species,
            Sent sent,
            OldImports old,
            ImportJobs jobs,
            Trying trying,
            ImportWork takingIn,
            Enclosures enclosures,
            Clock clock) {
        this.runs = runs;
        this.species = species;
        this.sent = sent;
        this.old = old;
        this.jobs = jobs;
        this.trying = trying;
        this.takingIn = takingIn;
        this.enclosures = enclosures;
        this.clock = clock;
    }

    /**
     * Keeps a file that was sent and looks what is in it.
     *
     * @return the number of the import
     * @throws UnreadableException if it cannot be read
     */
    long open(SignedIn me, String name, InputStream content) {
        old.end();
        Sent.Fresh fresh = sent.keep(content);
        try {
            Columns columns = columns(me.siteId());
            Found found = found(fresh.path(), name, columns);
            List<Survey> surveys = found.surveys();
            List<Mapping> mappings = surveys.stream()
                    .map(survey -> Mapping.suggested(survey, columns))
                    .toList();
            String label = SheetFile.label(name);
            long id = runs.add(new Runs.NewRun(
                    me.siteId(),
                    me.personId(),
                    clock.instant(),
                    label,
                    fresh.sha256(),
                    fresh.bytes(),
                    surveys,
                    found.leftOut(),
                    new Choices(mappings, species.at(me.siteId()), false)));
            sent.number(fresh, id);
            return id;
        } finally {
            sent.delete(fresh.path());
        }
    }

    /** What is in a file: its sheets, and the names of what is none. */
    private record Found(List<Survey> surveys, List<String> leftOut) {}

    private static Found found(Path path, String name, Columns columns) {
        try (SheetFile file = SheetFile.open(path, name)) {
            List<Survey> surveys = new ArrayList<>();
            int count = 0;
            for (Sheet sheet : file.sheets()) {
                Survey survey = Survey.of(sheet, columns, rows -> {});
                count += survey.columns().size();
                surveys.add(survey);
            }
            if (count > MOST_COLUMNS) {
                throw new UnreadableException(Fault.TOO_MANY_COLUMNS);
            }
            return new Found(surveys, file.leftOut());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** By which names of columns are told. */
    Columns columns(long siteId) {
        return new Columns(
                runs.columns(siteId),
                enclosures.all(siteId).stream()
                        .map(one -> Words.normalised(one.code()))
                        .collect(Collectors.toSet()),
                enclosures.pointsById(siteId).values().stream()
                        .map(one -> Words.normalised(one.code()))
                        .collect(Collectors.toSet()));
    }

    /** Says what columns mean, for this file and those to come. */
    @Transactional
    void choose(SignedIn me, long runId, List<Mapping> mappings) {
        Run run = requireIdle(me, runId);
        remember(run, mappings);
        Choices choices = new Choices(mappings, run.choices().names(), false);
        runs.choose(run, choices);
    }

    private void remember(Run run, List<Mapping> mappings) {
        Columns columns = columns(run.siteId());
        Map<String, Meaning> chosen = new HashMap<>();
        for (int sheet = 0; sheet < mappings.size(); sheet++) {
            Survey survey = run.surveys().get(sheet);
            List<String> suggested = Mapping.suggested(survey, columns).meanings();
            List<String> said = mappings.get(sheet).meanings();
            for (int column = 0; column < said.size(); column++) {
                String name = Words.normalised(survey.columns().get(column).name());
                if (!said.get(column).equals(suggested.get(column)) && !name.isEmpty()) {
                    chosen.put(name, Meaning.of(said.get(column)).orElseThrow());
                }
            }
        }
        runs.remember(run.siteId(), chosen);
    }

    /** Says which species are meant by names, for this file and those to come; an empty text: ask again. */
    @Transactional
    void name(SignedIn me, long runId, Map<String, String> names) {
        Run run = requireIdle(me, runId);
        Map<String, String> all = new HashMap<>(run.choices().names());
        all.putAll(names);
        all.values().removeIf(String::isEmpty);
        runs.choose(run, run.choices().withNames(all));
        species.remember(me.siteId(), names);
    }

    /** Begins to find out what an import would do; false if too many wait. */
    boolean beginTry(SignedIn me, long runId) {
        Run run = requireIdle(me, runId);
        return jobs.begin(me, runId, Job.Kind.TRY, progress -> {
            try (Tables tables = Tables.open(sent.of(runId), run)) {
                runs.tried(run, trying.attempt(me, tables, run, progress));
            }
        });
    }

    /**
     * Begins to take a file in; false if too many wait.
     *
     * @param leaveOut whether bad rows are left out
     * @throws ConflictException if it has not been tried, or has bad rows that are not left out
     */
    boolean beginImport(SignedIn me, long runId, boolean leaveOut) {
        Run run = requireIdle(me, runId);
        Tried tried = run.tried().orElseThrow(() -> new ConflictException("an import must be tried first"));
        if (tried.bad() > 0 && !leaveOut) {
            throw new ConflictException("bad rows must be left out explicitly");
        }
        return jobs.begin(me, runId, Job.Kind.IMPORT, progress -> {
            takingIn.takeIn(me, runId, sent.of(runId), leaveOut, progress);
            sent.delete(runId);
        });
    }

    @Transactional
    void drop(SignedIn me, long runId) {
        Run run = requireIdle(me, runId);
        runs.end(run, Run.State.DROPPED, clock.instant());
        sent.delete(runId);
        jobs.forget(runId);
    }

    private Run requireIdle(SignedIn me, long runId) {
        Run run = runs.get(me.siteId(), runId);
        if (!run.isOpen() || jobs.find(runId).filter(Job::isUnderWay).isPresent()) {
            throw new ConflictException("the import is under way, done or given up");
        }
        return run;
    }
}
