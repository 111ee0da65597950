package dapple.target;

/** What a later feature knows of readings taken before a target is approved. */
public interface EarlierReadings {
    /** Whether anything was read at a site. */
    boolean existAt(long siteId);
}
