package dapple.people;

import dapple.site.AuditedThing;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.site.FieldChange;
import dapple.site.Formats;
import dapple.site.History;
import dapple.site.HistoryEntry;
import dapple.site.HistoryHead;
import dapple.site.HistoryWords;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.View;
import org.springframework.web.util.UrlPathHelper;

/** A thing's history, as a page or as a file: who changed what, by name, in the time of the site. */
@Component
public class Histories {
    private static final String FILE = ".csv";

    private final History history;
    private final People people;
    private final MessageSource messages;
    private final Formats formats;
    private final CsvSheets sheets;
    private final HttpServletRequest request;

    Histories(
            History history,
            People people,
            MessageSource messages,
            Formats formats,
            CsvSheets sheets,
            HttpServletRequest request) {
        this.history = history;
        this.people = people;
        this.messages = messages;
        this.formats = formats;
        this.sheets = sheets;
        this.request = request;
    }

    /**
     * Shows a page of a history; where the address that was asked for ends with {@code .csv}, gives all of it as a file.
     *
     * @param page from 1
     */
    public ModelAndView show(SignedIn me, HistoryHead head, AuditedThing thing, int page) {
        String address = new UrlPathHelper().getPathWithinApplication(request);
        HistoryWords words = new HistoryWords(thing, messages, formats, me.zone());
        Map<Long, String> names = people.names(me.siteId());
        if (address.endsWith(FILE)) {
            return new ModelAndView(file(me, head, words, names));
        }
        return new ModelAndView("site/history")
                .addObject("address", address)
                .addObject("head", head)
                .addObject("history", history.of(thing, page))
                .addObject("words", words)
                .addObject("authors", names);
    }

    private View file(SignedIn me, HistoryHead head, HistoryWords words, Map<Long, String> names) {
        List<Row> rows = history.all(words.thing()).stream()
                .flatMap(entry -> entry.changes().stream().map(change -> new Row(entry, change)))
                .toList();
        return sheets.of(me.site(), "history-" + head.title(), columns(words, names), rows);
    }

    private CsvColumns<Row> columns(HistoryWords words, Map<Long, String> names) {
        return CsvColumns.<Row>none()
                .with("at", row -> row.entry().at())
                .with("changed-by", row -> author(row.entry(), names))
                .word("change", "history.kind.", row -> row.entry().kind())
                .with("field", row -> words.field(row.change()))
                .with("before", row -> words.cell(row.change(), row.change().before()))
                .with("after", row -> words.cell(row.change(), row.change().after()));
    }

    private String author(HistoryEntry entry, Map<Long, String> names) {
        return entry.personId()
                .map(id -> names.containsKey(id) ? names.getOrDefault(id, "") : message("history.stranger"))
                .orElseGet(() -> message("history.program"));
    }

    private String message(String key) {
        return messages.getMessage(key, null, Locale.UK);
    }

    private record Row(HistoryEntry entry, FieldChange change) {}
}
