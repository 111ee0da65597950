package dapple.site;

/**
 * A set of ids or words that an audited thing holds in a table of its own; sets of one field are told together.
 *
 * @param field what they are told as
 * @param elements the field under which the names or words of the elements are known to {@link AuditedThing}
 * @param table where its revisions stand
 * @param owner the column of the thing's id
 * @param column that of the elements
 */
public record AuditedSet(String field, String elements, String table, String owner, String column) {}
