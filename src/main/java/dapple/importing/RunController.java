package dapple.importing;

import dapple.enclosure.Enclosures;
import dapple.importing.sheet.ColumnFound;
import dapple.importing.sheet.Columns;
import dapple.importing.sheet.DayOrder;
import dapple.importing.sheet.Field;
import dapple.importing.sheet.Mapping;
import dapple.importing.sheet.Meaning;
import dapple.importing.sheet.NumberStyle;
import dapple.importing.sheet.Subject;
import dapple.importing.sheet.Survey;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One file on its way into the record: what its columns mean, what it would do, and doing it. */
@Controller
@Allowed(Action.IMPORT)
@RequestMapping("/records/import/{runId}")
class RunController {
    private final Imports imports;
    private final Runs runs;
    private final ImportJobs jobs;
    private final ImportWords words;
    private final Enclosures enclosures;

    RunController(Imports imports, Runs runs, ImportJobs jobs, ImportWords words, Enclosures enclosures) {
        this.imports = imports;
        this.runs = runs;
        this.jobs = jobs;
        this.words = words;
        this.enclosures = enclosures;
    }

    @ModelAttribute("run")
    Run run(@AuthenticationPrincipal SignedIn me, @PathVariable long runId) {
        return runs.get(me.siteId(), runId);
    }

    @ModelAttribute("words")
    ImportWords words() {
        return words;
    }

    /** A column with what it may mean. */
    record ColumnRow(ColumnFound column, String chosen, Optional<ImportWords.Option> extra, List<String> near) {}

    @GetMapping
    String columns(@AuthenticationPrincipal SignedIn me, @ModelAttribute("run") Run run, Model model) {
        if (!run.isOpen()) {
            return "redirect:/records/import/" + run.id() + "/try";
        }
        Columns columns = imports.columns(me.siteId());
        List<ImportWords.Option> amounts = words.amounts();
        List<List<ColumnRow>> rows = new ArrayList<>();
        for (int sheet = 0; sheet < run.surveys().size(); sheet++) {
            rows.add(rows(run.surveys().get(sheet), run.choices().sheets().get(sheet), columns, amounts));
        }
        model.addAttribute("rows", rows);
        model.addAttribute("amounts", amounts);
        model.addAttribute("fields", fields());
        model.addAttribute("before", runs.takenInBefore(me.siteId(), run.sha256()));
        return "importing/columns";
    }

    private List<ColumnRow> rows(Survey survey, Mapping mapping, Columns columns, List<ImportWords.Option> amounts) {
        List<ColumnRow> rows = new ArrayList<>();
        for (int column = 0; column < survey.columns().size(); column++) {
            ColumnFound found = survey.columns().get(column);
            Meaning meaning = Meaning.of(mapping.meanings().get(column)).orElseGet(Meaning.LeftOut::new);
            boolean isListed = !(meaning instanceof Meaning.Amount)
                    || amounts.stream().anyMatch(option -> option.code().equals(meaning.code()));
            List<String> near = meaning instanceof Meaning.LeftOut
                    ? columns.near(found.name()).stream().map(words::meaning).toList()
                    : List.of();
            rows.add(new ColumnRow(
                    found, meaning.code(), isListed ? Optional.empty() : Optional.of(words.option(meaning)), near));
        }
        return rows;
    }

    private Map<Subject, List<ImportWords.Option>> fields() {
        Map<Subject, List<ImportWords.Option>> fields = new LinkedHashMap<>();
        Arrays.stream(Subject.values())
                .forEach(subject -> fields.put(
                        subject,
                        Field.of(subject).stream()
                                .map(field -> words.option(new Meaning.Of(field)))
                                .toList()));
        return fields;
    }

    @PostMapping("/columns")
    String choose(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute("run") Run run,
            @RequestParam Map<String, String> typed) {
        List<Mapping> mappings = new ArrayList<>();
        for (int sheet = 0; sheet < run.surveys().size(); sheet++) {
            mappings.add(
                    mapping(run.surveys().get(sheet), run.choices().sheets().get(sheet), sheet, typed));
        }
        imports.choose(me, run.id(), mappings);
        return attempt(me, run);
    }

    /** What was chosen; what a form does not say stays as it was. */
    private static Mapping mapping(Survey survey, Mapping before, int sheet, Map<String, String> typed) {
        List<String> meanings = new ArrayList<>();
        for (int column = 0; column < survey.columns().size(); column++) {
            meanings.add(Optional.ofNullable(typed.get("means-" + sheet + "-" + column))
                    .flatMap(Meaning::of)
                    .map(Meaning::code)
                    .orElse(before.meanings().get(column)));
        }
        return new Mapping(
                meanings,
                chosen(DayOrder.values(), typed.get("days-" + sheet)).orElse(before.days()),
                chosen(NumberStyle.values(), typed.get("numbers-" + sheet)).orElse(before.numbers()));
    }

    private static <E extends Enum<E>> Optional<E> chosen(E[] all, @Nullable String name) {
        return Arrays.stream(all).filter(one -> one.name().equals(name)).findFirst();
    }

    @PostMapping("/names")
    String name(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute("run") Run run,
            @RequestParam MultiValueMap<String, String> form) {
        List<String> typed = form.getOrDefault("typed", List.of());
        List<String> meant = form.getOrDefault("meant", List.of());
        imports.name(me, run.id(), NameAsked.offered(run.tried(), typed, meant));
        return attempt(me, run);
    }

    private String attempt(SignedIn me, Run run) {
        String wait = imports.beginTry(me, run.id()) ? "" : "?busy";
        return "redirect:/records/import/" + run.id() + "/try" + wait;
    }

    /**
     * The work is looked at before what it has stored: it may end between the two. What has closed the run is done, though
     * its work may have some moments to go.
     */
    @GetMapping("/try")
    String tried(@AuthenticationPrincipal SignedIn me, @PathVariable long runId, Model model) {
        Optional<Job> job = jobs.find(runId);
        boolean isUnderWay = job.filter(Job::isUnderWay).isPresent();
        Run run = runs.get(me.siteId(), runId);
        if (run.isOpen() && run.tried().isEmpty() && job.isEmpty()) {
            return "redirect:/records/import/" + run.id();
        }
        model.addAttribute("run", run);
        model.addAttribute("running", isUnderWay && run.isOpen());
        model.addAttribute("job", job.orElse(null));
        model.addAttribute("tried", run.tried().orElse(null));
        model.addAttribute("done", run.done().orElse(null));
        model.addAttribute(
                "badRows", run.tried().map(tried -> BadRows.of(tried.badRows())).orElse(List.of()));
        model.addAttribute("unread", unread(run));
        model.addAttribute("asked", run.tried().map(NameAsked::of).orElse(List.of()));
        run.done()
                .filter(done -> !done.conflicts().isEmpty())
                .ifPresent(done -> model.addAttribute("points", enclosures.pointsById(me.siteId())));
        return "importing/try";
    }

    /** The names of the columns that are left out. */
    private static List<String> unread(Run run) {
        List<String> names = new ArrayList<>();
        for (int sheet = 0; sheet < run.surveys().size(); sheet++) {
            List<ColumnFound> columns = run.surveys().get(sheet).columns();
            List<String> meanings = run.choices().sheets().get(sheet).meanings();
            for (int column = 0; column < columns.size(); column++) {
                boolean isNamed = !columns.get(column).name().isEmpty();
                if (isNamed && meanings.get(column).equals(new Meaning.LeftOut().code())) {
                    names.add(columns.get(column).name());
                }
            }
        }
        return names;
    }

    @PostMapping
    String take(
            @AuthenticationPrincipal SignedIn me,
            @ModelAttribute("run") Run run,
            @RequestParam(defaultValue = "false") boolean leaveOut) {
        String wait = imports.beginImport(me, run.id(), leaveOut) ? "" : "?busy";
        return "redirect:/records/import/" + run.id() + "/try" + wait;
    }

    @PostMapping("/stop")
    String stop(@ModelAttribute("run") Run run) {
        jobs.stop(run.id());
        return "redirect:/records/import/" + run.id() + "/try";
    }

    @PostMapping("/drop")
    String drop(@AuthenticationPrincipal SignedIn me, @ModelAttribute("run") Run run) {
        imports.drop(me, run.id());
        return "redirect:/records/import";
    }
}
