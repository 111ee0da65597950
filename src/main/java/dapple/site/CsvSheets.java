package dapple.site;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.View;

/** Lists that leave as files for spreadsheets: a page's address with {@code .csv} gives all rows of its list. */
@Component
public class CsvSheets {
    private final CsvWriting writing;
    private final Clock clock;

    CsvSheets(CsvWriting writing, Clock clock) {
        this.writing = writing;
        this.clock = clock;
    }

    public <T> View of(SiteFacts site, String name, CsvColumns<T> columns, Collection<T> rows) {
        return of(site, name, columns, (CsvRows<T>) rows::forEach);
    }

    /**
     * A file that is written while its rows are found.
     *
     * @param name of the list, as a part of the file's name
     */
    public <T> View of(SiteFacts site, String name, CsvColumns<T> columns, CsvRows<T> rows) {
        String day = LocalDate.ofInstant(clock.instant(), site.timeZone()).toString();
        ContentDisposition saved = ContentDisposition.attachment()
                .filename(FileName.of(site, name + "-" + day, "csv"), StandardCharsets.UTF_8)
                .build();
        return (model, request, response) -> {
            response.setContentType("text/csv;charset=UTF-8");
            response.setHeader(HttpHeaders.CONTENT_DISPOSITION, saved.toString());
            writing.write(columns, rows, site.timeZone(), response.getOutputStream());
        };
    }
}
