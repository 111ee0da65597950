package dapple.overview;

import dapple.enclosure.EnclosureFacts;
import dapple.enclosure.Enclosures;
import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.People;
import dapple.people.SignedIn;
import dapple.reading.HistoryVerdict;
import dapple.reading.ReadingOnRecord;
import dapple.reading.Sentences;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.target.Targets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.context.MessageSource;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.InternalResourceView;

/**
 * The audit of an enclosure at an instant as a file, a line for each thing that it tells of; asked for an instant that is
 * none, the page, which says what to enter.
 */
@Controller
@Allowed(Action.AUDIT)
class AuditCsvController {
    private final Enclosures enclosures;
    private final Auditing auditing;
    private final Targets targets;
    private final People people;
    private final Sentences sentences;
    private final MessageSource messages;
    private final CsvSheets sheets;
    private final Clock clock;

    AuditCsvController(
            Enclosures enclosures,
            Auditing auditing,
            Targets targets,
            People people,
            Sentences sentences,
            MessageSource messages,
            CsvSheets sheets,
            Clock clock) {
        this.enclosures = enclosures;
        this.auditing = auditing;
        this.targets = targets;
        this.people = people;
        this.sentences = sentences;
        this.messages = messages;
        this.sheets = sheets;
        this.clock = clock;
    }

    @GetMapping("/enclosures/{enclosureId}/audit.csv")
    View at(
            @AuthenticationPrincipal SignedIn me,
            @PathVariable long enclosureId,
            @ModelAttribute("form") AuditForm form,
            BindingResult errors) {
        EnclosureFacts enclosure = enclosures.get(me.siteId(), enclosureId);
        return Optional.ofNullable(errors.getTarget())
                .flatMap(bound -> form.instant(clock.instant(), me.zone(), errors))
                .map(at -> of(me, enclosure, at))
                .orElseGet(() -> new InternalResourceView("/enclosures/" + enclosureId + "/audit"));
    }

    private View of(SignedIn me, EnclosureFacts enclosure, Instant at) {
        AuditSheet sheet = auditing.at(me.siteId(), enclosure.id(), at, LocalDate.ofInstant(at, me.zone()));
        AuditLines lines =
                new AuditLines(messages, sentences, people.names(me.siteId()), targets.speciesById(me.siteId()));
        return sheets.of(me.site(), "audit-" + enclosure.code(), columns(enclosure, at), lines.of(sheet));
    }

    private static CsvColumns<AuditLine> columns(EnclosureFacts enclosure, Instant at) {
        return CsvColumns.<AuditLine>none()
                .with("enclosure", line -> enclosure.code())
                .with("audited-at", line -> at)
                .word("what", "audit.kind.", AuditLine::kind)
                .with("which", AuditLine::what)
                .with("place", AuditLine::where)
                .with("in-words", AuditLine::words)
                .with("count", AuditLine::count)
                .with("from", AuditLine::from)
                .with("to", AuditLine::to)
                .word("quantity", "quantity.", reading(one -> one.reading().quantity()))
                .with("amount-shown", reading(one -> one.reading().amount()))
                .with("unit", reading(one -> one.reading().quantity().unit()))
                .with("meter", reading(one -> one.meter().code()))
                .word("told-then", "state.", reading(one -> states(one.told())))
                .word("judged-now", "state.", reading(one -> states(one.now())))
                .with("recorded-at", line -> line.recorded().map(AuditLine.Recorded::at))
                .with("recorded-by", line -> line.recorded().map(AuditLine.Recorded::by))
                .with("on-record-then", line -> line.wasOnRecord(at))
                .with("known-now", AuditLine::holds);
    }

    private static Function<AuditLine, Optional<?>> reading(Function<ReadingOnRecord, ?> part) {
        return line -> line.reading().map(part);
    }

    private static List<?> states(List<HistoryVerdict> verdicts) {
        return verdicts.stream().flatMap(one -> one.state().stream()).toList();
    }
}
