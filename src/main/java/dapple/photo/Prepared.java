package dapple.photo;

/** A picture as it is kept: encoded anew, so that nothing but the picture is in it. */
record Prepared(int widthPixels, int heightPixels, Encoded full, Encoded small) {
    /** The bytes of a JPEG. */
    static final class Encoded {
        private final byte[] bytes;

        Encoded(byte[] bytes) {
            this.bytes = bytes.clone();
        }

        byte[] bytes() {
            return bytes.clone();
        }
    }

    byte[] in(Scale scale) {
        return (scale == Scale.FULL ? full : small).bytes();
    }
}
