package dapple.importing.sheet;

/** What a row can speak of, in the order in which it is stored. */
public enum Subject {
    ROOM,
    ENCLOSURE,
    SPECIES,
    LAMP_MODEL,
    LAMP,
    METER,
    PERSON,
    POINT,
    ANIMAL,
    FITTING,
    COVER,
    READING
}
