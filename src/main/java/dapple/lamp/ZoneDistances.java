package dapple.lamp;

import dapple.site.ReferenceTable;
import dapple.species.UvZone;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** How far from a lamp the UV index of each zone's limits is reached: the limits of {@code shared/uv-zone-limits.csv}. */
@Component
class ZoneDistances {
    private final List<Limit> limits = ReferenceTable.rows("shared/uv-zone-limits.csv", Limit::of).stream()
            .filter(limit -> !limit.place().equals("shade"))
            .toList();

    /**
     * A row of the table.
     *
     * @param low none: from 0
     */
    private record Limit(UvZone zone, String place, Optional<Double> low, double high) {
        static Limit of(NamedCsvRecord row) {
            String low = row.getField("low_uvi");
            return new Limit(
                    UvZone.of(row.getField("method"), row.getField("zone")),
                    row.getField("place"),
                    low.isEmpty() ? Optional.empty() : Optional.of(Double.valueOf(low)),
                    Double.parseDouble(row.getField("high_uvi")));
        }
    }

    /**
     * A UV index and where it is reached.
     *
     * @param earliest if the lamp is as weak as it may be
     * @param latest if it is as strong as it may be
     */
    record Reach(
            double uvIndex, OutputCurve.Reached metres, OutputCurve.Reached earliest, OutputCurve.Reached latest) {}

    /**
     * What a zone asks.
     *
     * @param nearest where the ceiling is reached
     * @param basking where the high and the low end of the basking range are reached
     */
    record ZoneRow(UvZone zone, Reach nearest, List<Reach> basking) {}

    List<ZoneRow> of(OutputCurve uvIndex) {
        return UvZone.usual().stream().map(zone -> row(zone, uvIndex)).toList();
    }

    private ZoneRow row(UvZone zone, OutputCurve curve) {
        Limit ceiling = limit(zone, "ceiling");
        Limit basking = limit(zone, "basking");
        return new ZoneRow(
                zone,
                reach(curve, ceiling.high()),
                List.of(reach(curve, basking.high()), reach(curve, basking.low().orElseThrow())));
    }

    private Limit limit(UvZone zone, String place) {
        return limits.stream()
                .filter(limit -> limit.zone().equals(zone) && limit.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    Reach reach(OutputCurve curve, double uvIndex) {
        return new Reach(uvIndex, curve.reaches(uvIndex), curve.reachesAtLeast(uvIndex), curve.reachesAtMost(uvIndex));
    }
}
