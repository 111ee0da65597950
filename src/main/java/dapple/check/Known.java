package dapple.check;

import java.util.Map;

/**
 * What checks need to know of lamps, beside a scene and its light.
 *
 * @param hazards irradiance weighted for skin and eyes over the UV index, W/m², by lamp model
 */
public record Known(Map<Long, Double> hazards) {
    public Known {
        hazards = Map.copyOf(hazards);
    }
}
