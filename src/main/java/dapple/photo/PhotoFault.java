package dapple.photo;

/** Why a photo is not kept. */
public enum PhotoFault {
    NONE_CHOSEN,
    /** It has more bytes than are taken. */
    TOO_LARGE,
    /** It has more pixels than are taken. */
    TOO_MANY_PIXELS,
    NO_PICTURE,
    TOO_MANY_PHOTOS
}
