package dapple.target;

import dapple.light.judging.Band;
import dapple.light.quantity.Quantity;
import dapple.site.ReferenceTable;
import dapple.site.SourceMark;
import dapple.species.UvZone;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** The UV-index limits that a zone and a method suggest: the table {@code shared/uv-zone-limits.csv}. */
@Component
public class ZoneLimits {
    private final Map<UvZone, List<SourcedLimit>> limits =
            ReferenceTable.rows("shared/uv-zone-limits.csv", Row::of).stream()
                    .collect(Collectors.groupingBy(Row::zone, Collectors.mapping(Row::limit, Collectors.toList())));

    /**
     * The suggested limits.
     *
     * @throws IllegalArgumentException if the method is not used in the zone
     */
    public List<SourcedLimit> of(UvZone zone) {
        List<SourcedLimit> found = limits.get(zone);
        if (found == null) {
            throw new IllegalArgumentException("no limits for " + zone);
        }
        return found;
    }

    private record Row(UvZone zone, SourcedLimit limit) {
        static Row of(NamedCsvRecord row) {
            String low = row.getField("low_uvi");
            Band band =
                    new Band(low.isEmpty() ? 0 : Double.parseDouble(low), Double.parseDouble(row.getField("high_uvi")));
            SourcedLimit limit = new SourcedLimit(
                    Quantity.UV_INDEX,
                    LimitPlace.valueOf(row.getField("place").toUpperCase(Locale.ROOT)),
                    band,
                    SourceMark.valueOf(row.getField("mark").toUpperCase(Locale.ROOT)),
                    row.getField("source"));
            return new Row(UvZone.of(row.getField("method"), row.getField("zone")), limit);
        }
    }
}
