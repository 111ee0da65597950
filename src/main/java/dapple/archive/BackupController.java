package dapple.archive;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.NotFoundException;
import dapple.site.Sites;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;

/**
 * The backups of this installation: which there are, one more, one handed out. They hold all sites, so that only who
 * administers the first one has them.
 */
@Controller
@Allowed(Action.BACK_UP)
@RequestMapping("/backups")
class BackupController {
    private final Backups backups;
    private final BackupQueue queue;
    private final Sites sites;

    BackupController(Backups backups, BackupQueue queue, Sites sites) {
        this.backups = backups;
        this.queue = queue;
        this.sites = sites;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Model model) throws IOException {
        if (!sites.isFirst(me.siteId())) {
            model.addAttribute("first", sites.first().name());
            return "archive/backups-elsewhere";
        }
        model.addAttribute("backups", backups.all());
        model.addAttribute("folder", backups.folder().toString());
        model.addAttribute("retention", backups.retention());
        model.addAttribute("isWaiting", queue.isWaiting());
        model.addAttribute("failed", queue.failed());
        return "archive/backups";
    }

    @PostMapping
    String make(@AuthenticationPrincipal SignedIn me) {
        if (sites.isFirst(me.siteId())) {
            queue.ask(me.fullName());
        }
        return "redirect:/backups";
    }

    @GetMapping("/{day}")
    ResponseEntity<Resource> file(@AuthenticationPrincipal SignedIn me, @PathVariable String day) throws IOException {
        if (!sites.isFirst(me.siteId())) {
            throw new NotFoundException();
        }
        Path file = backups.file(parsed(day)).orElseThrow(NotFoundException::new);
        ContentDisposition saved = ContentDisposition.attachment()
                .filename(file.getFileName().toString())
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("application/zip"))
                .header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
                .body(new FileSystemResource(file));
    }

    private static LocalDate parsed(String day) {
        try {
            return LocalDate.parse(day);
        } catch (DateTimeException noDay) {
            throw new NotFoundException();
        }
    }
}
