package dapple.site;

/** Someone who changes recorded things and whose id a revision carries. */
public interface Author {
    long personId();
}
