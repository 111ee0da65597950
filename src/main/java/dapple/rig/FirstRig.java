package dapple.rig;

import java.util.List;

/** What is found in an enclosure when recording begins. */
public record FirstRig(List<LampStep.Fit> lamps, List<Cover> covers, List<Furniture> furniture) {
    public FirstRig {
        lamps = List.copyOf(lamps);
        covers = List.copyOf(covers);
        furniture = List.copyOf(furniture);
    }
}
