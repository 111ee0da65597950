package dapple.lamp;

import dapple.lamp.ZoneDistances.Reach;
import dapple.lamp.ZoneDistances.ZoneRow;
import java.util.List;
import java.util.Optional;

/**
 * How far a lamp model reaches, as its page shows it.
 *
 * @param curves UV index and illuminance, those that are known
 * @param zones empty where the UV index is not known
 */
record OutputShown(List<CurveShown> curves, Optional<Reach> strongest, List<ZoneRow> zones) {
    OutputShown {
        curves = List.copyOf(curves);
        zones = List.copyOf(zones);
    }
}
