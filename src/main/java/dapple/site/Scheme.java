package dapple.site;

/** The colours of the pages: by day, or for a dark reptile house at night. */
public enum Scheme {
    day,
    night
}
