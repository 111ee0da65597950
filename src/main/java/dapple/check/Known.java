package dapple.check;

import dapple.target.LightHours;
import java.util.Map;

/**
 * What checks need beside a scene and its light.
 *
 * @param lightHours that the targets ask for at this time of the year, by species
 * @param hazards irradiance weighted for skin and eyes over the UV index, W/m², by lamp model
 */
public record Known(Map<Long, LightHours> lightHours, Map<Long, Double> hazards) {
    public Known {
        lightHours = Map.copyOf(lightHours);
        hazards = Map.copyOf(hazards);
    }
}
