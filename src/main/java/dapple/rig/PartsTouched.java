package dapple.rig;

import java.util.List;

/** The parts that some changes of a rig began or ended. */
record PartsTouched(List<PartTouched> parts) {
    PartsTouched {
        parts = List.copyOf(parts);
    }

    /** What hung or stood there before and after a change, as it is after it. */
    public List<PartTouched> changed(long changeId) {
        List<PartTouched> went = ended(changeId);
        return begun(changeId).stream().filter(part -> part.isAmong(went)).toList();
    }

    public List<PartTouched> came(long changeId) {
        List<PartTouched> went = ended(changeId);
        return begun(changeId).stream().filter(part -> !part.isAmong(went)).toList();
    }

    public List<PartTouched> went(long changeId) {
        List<PartTouched> came = begun(changeId);
        return ended(changeId).stream().filter(part -> !part.isAmong(came)).toList();
    }

    private List<PartTouched> begun(long changeId) {
        return parts.stream().filter(part -> part.came(changeId)).toList();
    }

    private List<PartTouched> ended(long changeId) {
        return parts.stream().filter(part -> part.went(changeId)).toList();
    }
}
