package dapple.prediction;

/** What a form does to a rig: where it is found, and which fields it has. */
enum Task {
    FIT("lamps", "new"),
    SWAP("lamps", "swap"),
    MOVE("lamps", "move"),
    TIMER("lamps", "timer"),
    GEAR("lamps", "gear"),
    TAKE_OUT("lamps", "removal"),
    PUT_COVER("cover", "new"),
    REPLACE_COVER("cover", "replacement"),
    LAYERS("cover", "layers"),
    COVER_OFF("cover", "removal"),
    PUT_FURNITURE("furniture", "new"),
    MOVE_FURNITURE("furniture", "move"),
    FURNITURE_OFF("furniture", "removal");

    private final String things;
    private final String deed;

    Task(String things, String deed) {
        this.things = things;
        this.deed = deed;
    }

    String path(long enclosureId, long partId) {
        String part = partId == 0 ? "" : partId + "/";
        return "/enclosures/" + enclosureId + "/rig/" + things + "/" + part + deed;
    }

    /** What kind of part it is about. */
    String things() {
        return things;
    }

    boolean choosesLamp() {
        return this == FIT || this == SWAP;
    }
}
