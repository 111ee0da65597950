package dapple.archive;

import dapple.site.FileName;
import dapple.site.SiteFacts;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.regex.Pattern;

/** A calendar year of a site, or the twelve months until now, as a page asks for it. */
record YearAsked(String name, RecordSpan span) {
    static final String LAST_MONTHS = "last-12-months";

    private static final Pattern YEAR = Pattern.compile("(19|20)\\d\\d");

    /** What is meant by a year's number or by the words for the last months; empty for anything else, and for the future. */
    static Optional<YearAsked> of(String typed, SiteFacts site, Instant now) {
        ZonedDateTime here = now.atZone(site.timeZone());
        if (typed.equals(LAST_MONTHS)) {
            Instant from = here.toLocalDate()
                    .minusYears(1)
                    .atStartOfDay(site.timeZone())
                    .toInstant();
            return Optional.of(new YearAsked(typed, new RecordSpan(site, from, now)));
        }
        return Optional.of(typed)
                .filter(YEAR.asMatchPredicate())
                .map(Integer::parseInt)
                .filter(number -> number <= here.getYear())
                .map(number ->
                        new YearAsked(typed, new RecordSpan(site, first(number, site), first(number + 1, site))));
    }

    private static Instant first(int number, SiteFacts site) {
        return LocalDate.of(number, 1, 1).atStartOfDay(site.timeZone()).toInstant();
    }

    String fileName() {
        return FileName.of(span.site(), name, "zip");
    }
}
