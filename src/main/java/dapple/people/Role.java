package dapple.people;

/** What a person does at a site; a person may have several. */
public enum Role {
    KEEPER,
    SUPERVISOR,
    VET,
    LIGHTING_LEAD,
    MAINTENANCE,
    /** Reads everything, changes nothing, until an end date. */
    INSPECTOR,
    ADMINISTRATOR
}
