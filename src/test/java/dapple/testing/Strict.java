package dapple.testing;

/** Whether the build must fail where it would otherwise skip what the machine lacks: {@code -Dstrict=true}. */
final class Strict {
    private Strict() {}

    static boolean on() {
        return Boolean.getBoolean("strict");
    }
}
