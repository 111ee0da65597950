package dapple.overview;

/** What a line of an audit tells of. */
enum AuditKind {
    LAMP,
    COVER,
    FURNITURE,
    ACCEPTANCE,
    RESIDENT,
    TARGET,
    VETS_ORDER,
    PLANNED_OFF,
    READING,
    DECISION,
    ALARM
}
