package dapple.archive;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.SiteFacts;
import dapple.site.Sites;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What goes out of the house: a year's record, and from here everything else that is taken out or in. */
@Controller
@Allowed(Action.EXPORT)
@RequestMapping("/records")
class RecordsController {
    private final Archives archives;
    private final Sites sites;
    private final JdbcClient database;
    private final Clock clock;

    RecordsController(Archives archives, Sites sites, JdbcClient database, Clock clock) {
        this.archives = archives;
        this.sites = sites;
        this.database = database;
        this.clock = clock;
    }

    @GetMapping
    String page(@AuthenticationPrincipal SignedIn me, Model model) {
        model.addAttribute("years", years(me));
        return "archive/records";
    }

    /** From the year of the first visit to this one, newest first. */
    private List<String> years(SignedIn me) {
        int last = clock.instant().atZone(me.zone()).getYear();
        int first = database.sql("select min(begun_at) from visit where site_id = :site")
                .param("site", me.siteId())
                .query((row, number) -> Optional.ofNullable(row.getObject(1, OffsetDateTime.class)))
                .single()
                .map(at -> at.atZoneSameInstant(me.zone()).getYear())
                .orElse(last);
        return IntStream.rangeClosed(0, last - first)
                .mapToObj(back -> String.valueOf(last - back))
                .toList();
    }

    /** Written while it is read from the database: a large record begins to arrive at once. */
    @GetMapping("/year")
    void year(
            @AuthenticationPrincipal SignedIn me,
            @RequestParam(defaultValue = "") String from,
            HttpServletResponse response)
            throws IOException {
        SiteFacts site = sites.get(me.siteId());
        Instant now = clock.instant();
        Optional<YearAsked> asked = YearAsked.of(from, site, now);
        if (asked.isEmpty()) {
            response.sendRedirect("/records?unknown");
            return;
        }
        ContentDisposition saved = ContentDisposition.attachment()
                .filename(asked.get().fileName(), StandardCharsets.UTF_8)
                .build();
        response.setContentType("application/zip");
        response.setHeader(HttpHeaders.CONTENT_DISPOSITION, saved.toString());
        archives.write(new ArchiveScope.Year(asked.get().span()), me.fullName(), response.getOutputStream());
    }
}
