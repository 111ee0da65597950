package dapple.light.design;

/** A cover of a planned rig: its layers now and then, 0 where it is taken away. */
public record PlannedCover(String coverId, int layersNow, int layers) {
    public boolean isChanged() {
        return layersNow != layers;
    }
}
