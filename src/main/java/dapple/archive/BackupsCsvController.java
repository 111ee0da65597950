package dapple.archive;

import dapple.people.Action;
import dapple.people.Allowed;
import dapple.people.SignedIn;
import dapple.site.CsvColumns;
import dapple.site.CsvSheets;
import dapple.site.NotFoundException;
import dapple.site.Sites;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.View;

/** The backups of this installation as a file, for those who have them. */
@Controller
@Allowed(Action.BACK_UP)
class BackupsCsvController {
    private static final double MILLIS_PER_SECOND = 1000;

    private final Backups backups;
    private final Sites sites;
    private final CsvSheets sheets;

    BackupsCsvController(Backups backups, Sites sites, CsvSheets sheets) {
        this.backups = backups;
        this.sites = sites;
        this.sheets = sheets;
    }

    @GetMapping("/backups.csv")
    View all(@AuthenticationPrincipal SignedIn me) throws IOException {
        if (!sites.isFirst(me.siteId())) {
            throw new NotFoundException();
        }
        CsvColumns<BackupFile> columns = CsvColumns.<BackupFile>none()
                .with("day", BackupFile::day)
                .with("made-at", says(Manifest::madeAt))
                .with("made-by", says(Manifest::madeBy))
                .with("bytes", BackupFile::bytes)
                .with("took", says(one -> one.writtenInMillis() / MILLIS_PER_SECOND))
                .with("readable", row -> row.manifest().isPresent());
        return sheets.of(me.site(), "backups", columns, backups.all());
    }

    private static Function<BackupFile, Optional<?>> says(Function<Manifest, ?> part) {
        return row -> row.manifest().map(part);
    }
}
