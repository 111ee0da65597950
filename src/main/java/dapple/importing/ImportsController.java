package dapple.importing;

import dapple.importing.sheet.Fault;
import dapple.importing.sheet.Subject;
import dapple.importing.sheet.UnreadableException;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** What can be taken in, what has been, and where a file is sent. */
@Controller
@Allowed(Action.IMPORT)
@RequestMapping("/records/import")
class ImportsController {
    private final Imports imports;
    private final Runs runs;
    private final Beginnings beginnings;
    private final ImportWords words;
    private final People people;

    ImportsController(Imports imports, Runs runs, Beginnings beginnings, ImportWords words, People people) {
        this.imports = imports;
        this.runs = runs;
        this.beginnings = beginnings;
        this.words = words;
        this.people = people;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("there", beginnings.at(me.siteId()));
        model.addAttribute("runs", runs.newest(me.siteId()));
        model.addAttribute("names", people.names(me.siteId()));
        model.addAttribute("subjects", Subject.values());
        return "importing/imports";
    }

    @PostMapping
    String send(@AuthenticationPrincipal SignedIn me, @RequestParam Optional<MultipartFile> file, Model model) {
        try {
            return "redirect:/records/import/" + open(me, file);
        } catch (UnreadableException refused) {
            model.addAttribute("refused", refused);
            return page(me, model);
        }
    }

    private long open(SignedIn me, Optional<MultipartFile> file) {
        MultipartFile sent =
                file.filter(chosen -> !chosen.isEmpty()).orElseThrow(() -> new UnreadableException(Fault.EMPTY));
        try (InputStream content = sent.getInputStream()) {
            return imports.open(
                    me, Optional.ofNullable(sent.getOriginalFilename()).orElse(""), content);
        } catch (IOException cause) {
            throw new UncheckedIOException("cannot read a file that was sent", cause);
        }
    }

    @GetMapping("/templates/{subject}.csv")
    ResponseEntity<String> template(@PathVariable String subject) {
        Subject wanted = Arrays.stream(Subject.values())
                .filter(one -> one.name().equalsIgnoreCase(subject))
                .findFirst()
                .orElseThrow(NotFoundException::new);
        String head = Template.of(wanted).stream().map(words::field).collect(Collectors.joining(","));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header(
                        "Content-Disposition",
                        "attachment; filename=\"" + wanted.name().toLowerCase(Locale.ROOT) + ".csv\"")
                .body("\ufeff" + head + "\r\n");
    }
}
