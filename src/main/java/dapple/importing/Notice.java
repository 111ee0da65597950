package dapple.importing;

/** Something that a person should know before an import, and that does not stand in its way. */
public record Notice(Kind kind, String text, String sheet, long line) {
    /** What it is. */
    public enum Kind {
        /** What is on record says otherwise, and stays. */
        DIFFERS,
        /** Two rows say different things of one; the first stands. */
        CONTRADICTS,
        /** Somebody has said what it means, here or for an earlier file. */
        SPECIES_CHOSEN,
        SPECIES_SYNONYM,
        SPECIES_COMMON,
        SPECIES_NEW,
        SPECIES_WITHOUT_ANIMAL,
        METER_UNKNOWN,
        METER_OTHER_QUANTITY,
        PERSON_UNKNOWN,
        PERSON_WITHOUT_PASSWORD,
        NO_ACCESSION,
        ANIMAL_WITHOUT_STAY,
        LAMP_WITHOUT_DAY,
        COVER_WITHOUT_DAY,
        COVER_UNKNOWN,
        DAY_ONLY
    }
}
