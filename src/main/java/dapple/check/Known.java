package dapple.check;

import java.time.LocalDate;
import java.util.Map;

/**
 * What checks need to know of lamps and the time, beside a scene and its light.
 *
 * @param hazards irradiance weighted for skin and eyes over the UV index, W/m², by lamp model
 * @param day at the site, of which the timers are asked
 */
public record Known(Map<Long, Double> hazards, LocalDate day) {
    public Known {
        hazards = Map.copyOf(hazards);
    }
}
