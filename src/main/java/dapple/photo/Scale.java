package dapple.photo;

/** The sizes in which a photo is kept. */
enum Scale {
    FULL(1600),
    SMALL(320);

    private final int longestEdgePixels;

    Scale(int longestEdgePixels) {
        this.longestEdgePixels = longestEdgePixels;
    }

    int longestEdgePixels() {
        return longestEdgePixels;
    }
}
