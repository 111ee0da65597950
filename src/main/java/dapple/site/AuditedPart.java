package dapple.site;

/**
 * What belongs to an audited thing and is told in its history.
 *
 * @param entity the audited class of the part
 * @param owner its field that refers to the thing
 * @param siteId the site whose parts are told
 */
public record AuditedPart(Class<?> entity, String owner, long siteId) {}
