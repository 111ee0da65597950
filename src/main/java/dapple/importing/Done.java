package dapple.importing;

import java.util.List;

/**
 * What an import did.
 *
 * @param known readings that were on record already, the same
 * @param conflicts readings that are on record otherwise, and stay so; the first of them in words
 */
record Done(
        List<Tried.Created> created, long visits, long stored, long known, long conflictCount, List<String> conflicts, long leftOut) {}
