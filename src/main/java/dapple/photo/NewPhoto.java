package dapple.photo;

import dapple.reading.Visitor;
import java.util.UUID;

/**
 * A photo to keep with a visit.
 *
 * @param key made with the form, so that one that is posted twice is stored once
 */
public record NewPhoto(Visitor visitor, UUID visitKey, long enclosureId, UUID key) {}
